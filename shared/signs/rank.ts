/**
 * Ranks the troubles that a reader's signs may point at, and suggests what to look for next. Points add up as points.ts states. A trouble
 * is listed where at least one sign fits it. Reportable troubles come first, however few points they have. The others follow in order of
 * points if more counts for them than against. The rest are listed as fitting little. The ranking orders what to check and who to call.
 * It never says what a colony has: signs are few, shared by many troubles, and easily missed.
 */
import { missingPoints, outOfSeasonPoints, therePoints, unlistedPoints, type Shows, type Strength } from './points.ts';

export type ShownSign = { readonly sign: string; readonly strength: Strength; readonly shows: Shows };

export type Trouble = {
  readonly id: string;
  /** The law requires a report. */
  readonly mustReport: boolean;
  /** It passes by itself, or is not urgent. */
  readonly harmless: boolean;
  readonly shown: readonly ShownSign[];
  /** The phases in which it occurs. Absent: all of them. */
  readonly phases?: readonly string[];
};

export type Picked = {
  readonly there: readonly string[];
  /** Looked for and absent. */
  readonly notThere: readonly string[];
  readonly phase?: string;
};

export type Against = { readonly sign: string; readonly why: 'never-shows' | 'not-there' };

export type Candidate = {
  readonly id: string;
  readonly points: number;
  readonly fits: readonly ShownSign[];
  readonly against: readonly Against[];
  /** Present signs that this trouble does not explain. */
  readonly open: readonly string[];
  readonly outOfSeason: boolean;
  /** The signs that would move it most, once looked for. At most three. */
  readonly lookFor: readonly string[];
};

export type Ranking = {
  readonly candidates: readonly Candidate[];
  /** Troubles that a sign fits but more signs contradict. */
  readonly fitLittle: readonly string[];
  /** `no-match` and `only-harmless` require the sentence that the list can miss things. */
  readonly outcome: 'nothing-picked' | 'no-match' | 'only-harmless' | 'candidates';
};

const mostToLookFor = 3;

export function rankSigns(picked: Picked, troubles: readonly Trouble[]): Ranking {
  const ranked = troubles
    .map((trouble) => ({ trouble, candidate: judge(picked, trouble) }))
    .filter(({ candidate }) => candidate.fits.length > 0);
  const named = ranked.filter(({ trouble, candidate }) => trouble.mustReport || candidate.points > 0);
  const ordered = [...named].sort(
    (a, b) =>
      Number(b.trouble.mustReport) - Number(a.trouble.mustReport) ||
      b.candidate.points - a.candidate.points ||
      b.candidate.fits.length - a.candidate.fits.length,
  );
  return {
    candidates: ordered.map(({ candidate }) => candidate),
    fitLittle: ranked.filter((each) => !named.includes(each)).map(({ trouble }) => trouble.id),
    outcome: outcomeOf(
      picked,
      named.map(({ trouble }) => trouble),
    ),
  };
}

function outcomeOf(picked: Picked, named: readonly Trouble[]): Ranking['outcome'] {
  if (picked.there.length === 0) return 'nothing-picked';
  if (named.length === 0) return 'no-match';
  return named.every(({ harmless }) => harmless) ? 'only-harmless' : 'candidates';
}

function judge({ there, notThere, phase }: Picked, { id, shown, phases }: Trouble): Candidate {
  const listed = new Map(shown.map((one) => [one.sign, one]));
  const met = there.flatMap((sign) => listed.get(sign) ?? []);
  const missed = notThere.flatMap((sign) => listed.get(sign) ?? []);
  const open = there.filter((sign) => !listed.has(sign));
  const outOfSeason = phase !== undefined && phases !== undefined && !phases.includes(phase);
  return {
    id,
    points:
      sum(met.map(therePoints)) +
      sum(missed.map(({ shows }) => missingPoints[shows])) +
      open.length * unlistedPoints +
      (outOfSeason ? outOfSeasonPoints : 0),
    fits: met.filter(({ shows }) => shows !== 'never'),
    against: [
      ...met.filter(({ shows }) => shows === 'never').map(({ sign }) => ({ sign, why: 'never-shows' as const })),
      ...missed.filter(({ shows }) => missingPoints[shows] < 0).map(({ sign }) => ({ sign, why: 'not-there' as const })),
    ],
    open,
    outOfSeason,
    lookFor: nextOf(shown.filter(({ sign }) => !there.includes(sign) && !notThere.includes(sign))),
  };
}

/** The signs that would add or subtract most, in list order where they are equal. */
const nextOf = (shown: readonly ShownSign[]): string[] =>
  [...shown]
    .sort((a, b) => moves(b) - moves(a))
    .slice(0, mostToLookFor)
    .map(({ sign }) => sign);

const moves = (one: ShownSign): number => Math.abs(therePoints(one)) - missingPoints[one.shows];

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
