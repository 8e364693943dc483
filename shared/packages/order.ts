/**
 * Totals of an order of packages: net weight, shaken weight, bees, queens, syrup and gross weight. Net is the weight on the label. The
 * shaken weight adds an allowance for deaths on the way, where the supplier states it. Gross is net with cage and can, as the supplier
 * states them, and is absent without them. All weights stay in pounds, the unit of the label. Units: pounds, bees per pound, litres of
 * syrup per package, per cent.
 */
import { ok, err, type Result, type Refused } from '../result.ts';

export type OrderLine = { readonly count: number; readonly pounds: number };

export type OrderTerms = {
  readonly beesPerPound: number;
  readonly spareQueens?: number;
  readonly allowancePercent?: number;
  readonly cagePounds?: number;
  readonly canPounds?: number;
  readonly syrupLitresEach?: number;
};

export type OrderTotals = {
  readonly packages: number;
  readonly netPounds: number;
  readonly bees: number;
  readonly queens: number;
  /** Only where the allowance is known. */
  readonly shakePounds?: number;
  /** Only where both cage and can are known. */
  readonly grossPounds?: number;
  /** Only where the syrup per can is known. */
  readonly syrupLitres?: number;
};

export type PackageOrder = { readonly lines: readonly (OrderLine & OrderTotals)[]; readonly all: OrderTotals };

export type OrderReason =
  | 'no-lines'
  | 'no-count'
  | 'count-not-whole'
  | 'no-weight'
  | 'too-much'
  | 'no-bees-per-pound'
  | 'impossible-spare-queens'
  | 'impossible-allowance'
  | 'impossible-cage'
  | 'impossible-can'
  | 'impossible-syrup';

const mostPackages = 10_000;
const heaviestPounds = 20;
const mostBeesPerPound = 10_000;

export function packageOrder(lines: readonly OrderLine[], terms: OrderTerms): Result<PackageOrder, OrderReason> {
  const wrong = checkTerms(terms) ?? (lines.length === 0 ? err('no-lines') : undefined);
  if (wrong) return wrong;
  for (const [index, line] of lines.entries()) {
    const reason = checkLine(line);
    if (reason) return err(reason, { row: index + 1 });
  }
  const worked = lines.map((line) => ({ ...line, ...totals(line.count, line.count * line.pounds, 0, terms) }));
  const packages = lines.reduce((sum, line) => sum + line.count, 0);
  const netPounds = lines.reduce((sum, line) => sum + line.count * line.pounds, 0);
  if (packages > mostPackages) return err('too-much');
  return ok({ lines: worked, all: totals(packages, netPounds, terms.spareQueens ?? 0, terms) });
}

function totals(packages: number, netPounds: number, spareQueens: number, terms: OrderTerms): OrderTotals {
  const { beesPerPound, allowancePercent, cagePounds, canPounds, syrupLitresEach } = terms;
  return {
    packages,
    netPounds,
    bees: netPounds * beesPerPound,
    queens: packages + spareQueens,
    ...(allowancePercent === undefined ? {} : { shakePounds: netPounds * (1 + allowancePercent / 100) }),
    ...(cagePounds === undefined || canPounds === undefined ? {} : { grossPounds: netPounds + packages * (cagePounds + canPounds) }),
    ...(syrupLitresEach === undefined ? {} : { syrupLitres: packages * syrupLitresEach }),
  };
}

function checkLine({ count, pounds }: OrderLine): OrderReason | undefined {
  if (!(count > 0)) return 'no-count';
  if (!Number.isInteger(count)) return 'count-not-whole';
  if (!(pounds > 0)) return 'no-weight';
  return count > mostPackages || pounds > heaviestPounds ? 'too-much' : undefined;
}

function checkTerms(terms: OrderTerms): Refused<OrderReason> | undefined {
  const spare = terms.spareQueens ?? 0;
  if (!(terms.beesPerPound > 0 && terms.beesPerPound <= mostBeesPerPound)) return err('no-bees-per-pound');
  if (!Number.isInteger(spare) || spare < 0 || spare > mostPackages) return err('impossible-spare-queens');
  const within = (value: number | undefined, most: number) => value === undefined || (value >= 0 && value <= most);
  if (!within(terms.allowancePercent, 100)) return err('impossible-allowance');
  if (!within(terms.cagePounds, heaviestPounds)) return err('impossible-cage');
  if (!within(terms.canPounds, heaviestPounds)) return err('impossible-can');
  return within(terms.syrupLitresEach, heaviestPounds) ? undefined : err('impossible-syrup');
}
