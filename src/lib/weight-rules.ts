/*
 * The three rules on net contents, built from the club's figures for shared/packages. The name of a row states its range: `lot-100-500`,
 * `lot-over-3200`, `g-300-500`, `lb-0-94-to-1-08` (pounds with decimals), `lb-0-25` for a single label. A rule with a missing row is
 * null, and the calculator says so.
 */
import type { LotPlan, Tolerance, WeightRule } from '../../shared/packages/weight-rule.ts';
import { kilogramsToGrams, poundsToKilograms } from '../../shared/units/weight.ts';
import type { Almanac } from './content.ts';
import { rowsOn, sourceWords, type FigureRow } from './figures.ts';

type HeldRule = {
  readonly rule: Omit<WeightRule, 'tolerances'> & { readonly tolerances: readonly (Tolerance & { readonly fromMemory?: boolean })[] };
  /** The law, with year and place. */
  readonly from: string;
  readonly sampleFromMemory: boolean;
};

type Span = { readonly from: number; readonly to: number };
type Held = Span & { readonly value: number; readonly fromMemory: boolean };
type Rows = { readonly spans: (id: string) => readonly Held[]; readonly value: (id: string, row?: string) => number | undefined };

const largestLot = 1_000_000;

/** Member states of the European Union, whose weights follow Directive 76/211/EEC: its list of countries, 2020, by codes of ISO 3166-1. */
const UNION = 'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(' ');
const LANDS = { us: ['US'], ca: ['CA'], eu: ['GB', ...UNION] } as const;
export type RuleName = keyof typeof LANDS;

/** The rules that are law in a land. A club that names no land has chosen its own figures: all of them. */
export const rulesOfLand = (land: string | undefined): RuleName[] =>
  (Object.keys(LANDS) as RuleName[]).filter((rule) => land === undefined || (LANDS[rule] as readonly string[]).includes(land.slice(0, 2)));

export function heldWeightRules(almanac: Almanac, day: string): Record<RuleName, HeldRule | null> {
  const rowsOf = (id: string): FigureRow[] => {
    const figure = almanac.figures.get(id);
    return figure ? rowsOn(figure, day) : [];
  };
  const rows: Rows = {
    spans: (id) =>
      rowsOf(id)
        .flatMap((row) => heldSpan(row) ?? [])
        .sort((a, b) => a.from - b.from),
    value: (id, row) => rowsOf(id).find((each) => row === undefined || each.id === row)?.value,
  };
  const held = (rule: WeightRule | null, sampleFigure: string, sources: readonly string[]): HeldRule | null =>
    rule && {
      rule,
      from: sources
        .flatMap((id) => almanac.sources.get(id) ?? [])
        .map(sourceWords)
        .join('; '),
      sampleFromMemory: rows.spans(sampleFigure).some(({ fromMemory }) => fromMemory),
    };
  return {
    eu: held(euRule(rows), 'net-mean-sample-eu', ['eu-76-211', 'uk-si-2006-659']),
    ca: held(caRule(rows), 'net-sample-ca', ['canada-sor-2018-108']),
    us: held(usRule(rows), 'net-sample-us', ['nist-handbook-133']),
  };
}

function euRule({ spans, value }: Rows): WeightRule | null {
  const [means, counts, accepts] = [spans('net-mean-sample-eu'), spans('net-count-sample-eu'), spans('net-count-accept-eu')];
  const share = value('net-short-once-share-eu', 'small-lot');
  const certainty = value('net-mean-certainty', 'eu');
  const failing = value('net-short-twice-eu');
  const step = value('net-tolerance-step-eu');
  const tolerances = [...sharesOf(spans('net-tolerance-eu-share')), ...gramsOf(spans('net-tolerance-eu-fixed'))];
  const larger = counts.map(({ from, to, value: weigh }): LotPlan | null => {
    const mean = means.find((each) => each.from <= from && from <= each.to);
    const accept = accepts.find((each) => each.from === from);
    return mean && accept ? { from, to, weigh: mean.value, mean: 'with-chance', shortTest: { weigh, mostShort: accept.value } } : null;
  });
  if (counts.length === 0 || larger.includes(null) || !share || !certainty || !failing || !step || tolerances.length === 0) return null;
  const small: LotPlan = {
    from: 1,
    to: counts[0]!.from - 1,
    weigh: 'all',
    mean: 'plain',
    shortTest: { weigh: 'all', mostShort: { shareOfLot: share / 100 } },
  };
  return {
    lots: [small, ...(larger as LotPlan[])],
    tolerances,
    tolerancesRoundUpToG: step,
    certainty: certainty / 100,
    mostShortTwice: failing - 1,
  };
}

function caRule({ spans, value }: Rows): WeightRule | null {
  const [samples, shares] = [spans('net-sample-ca'), spans('net-sample-share-ca')];
  const certainty = value('net-mean-certainty', 'ca');
  const failing = value('net-short-twice-ca');
  const tolerances = [...sharesOf(spans('net-tolerance-ca-share')), ...gramsOf(spans('net-tolerance-ca-fixed'))];
  if (samples.length === 0 || shares.length === 0 || !certainty || !failing || tolerances.length === 0) return null;
  const larger = samples.map(({ from, to, value: least }): LotPlan => {
    const share = shares.find((each) => each.from === from);
    return { from, to, weigh: share ? { share: share.value / 100, least } : least, mean: 'with-chance' };
  });
  return { lots: [wholeUnder(samples[0]!), ...larger], tolerances, certainty: certainty / 100, mostShortTwice: failing - 1 };
}

function usRule({ spans, value }: Rows): WeightRule | null {
  const samples = spans('net-sample-us');
  const certainty = value('net-mean-certainty', 'us');
  if (samples.length === 0 || !certainty) return null;
  const tolerances = spans('net-tolerance-us').map(({ from, to, value: pounds, fromMemory }) => ({
    ...between({ from, to }),
    grams: toGrams(pounds),
    fromMemory,
  }));
  return {
    lots: [wholeUnder(samples[0]!), ...samples.map(({ from, to, value: weigh }): LotPlan => ({ from, to, weigh, mean: 'with-chance' }))],
    tolerances,
    certainty: certainty / 100,
  };
}

/** Smaller lots than that of the first row are weighed completely. A single package has no spread. */
const wholeUnder = ({ from }: Span): LotPlan => ({ from: 2, to: from - 1, weigh: 'all', mean: 'with-chance' });

const between = ({ from, to }: Span) => ({ fromG: from, belowG: to });
const sharesOf = (spans: readonly Held[]) => spans.map((span) => ({ ...between(span), percent: span.value }));
const gramsOf = (spans: readonly Held[]) => spans.map((span) => ({ ...between(span), grams: span.value }));
const toGrams = (pounds: number): number => kilogramsToGrams(poundsToKilograms(pounds));

function heldSpan(row: FigureRow): Held | null {
  const span = spanOf(row.id);
  return span && row.value !== undefined ? { ...span, value: row.value, fromMemory: row.certainty === 'memory' } : null;
}

function spanOf(id: string): Span | null {
  const [, first, last] = /^(?:lot|g)-(\d+)-(\d+)$/.exec(id) ?? [];
  if (first && last) return { from: Number(first), to: Number(last) };
  const [, over] = /^lot-over-(\d+)$/.exec(id) ?? [];
  if (over) return { from: Number(over) + 1, to: largestLot };
  const [, least, most] = /^lb-(\d+-\d+)(?:-to-(\d+-\d+))?$/.exec(id) ?? [];
  if (!least) return null;
  const grams = (words: string): number => toGrams(Number(words.replace('-', '.')));
  // A row of a single label covers it however it was rounded to grams.
  return most ? { from: grams(least), to: grams(most) } : { from: grams(least) - 0.5, to: grams(least) + 0.5 };
}
