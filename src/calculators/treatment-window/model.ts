/* The club's label rows compared with a plan, for the form and the worked example. */
import type { Day } from '../../../shared/days/day.ts';
import {
  againstLimit,
  judgeRow,
  judgeWithoutRow,
  samePlace,
  type Judgement,
  type LabelRow,
  type Planned,
  type TreatmentState,
} from '../../../shared/treatments/label-row.ts';
import type { System } from '../form/measures.ts';

export type ShownRow = LabelRow & {
  readonly entry: string;
  readonly id: string;
  readonly title: string;
  readonly form: string;
  readonly note: number;
};

export type TreatmentFigures = { readonly units: System; readonly rows: readonly ShownRow[] };

export type RowJudgement = {
  readonly id: string;
  readonly title: string;
  /** Absent where an ingredient has no row for the place. */
  readonly row?: ShownRow;
  readonly judgement: Judgement;
  /** Where no label of the place was opened: rows of other places that exclude the temperatures of these days. */
  readonly elsewhere: readonly ShownRow[];
};

/**
 * The rows of the place, and one line for each ingredient without any. Without a place: all rows. Ruled-out rows come first. Rows that
 * only the label of another place contradicts come before the rest.
 */
export function judgeAll(planned: Planned, rows: readonly ShownRow[], today: Day): RowJudgement[] {
  const unsaid = planned.place.trim() === '';
  const entries = [...new Set(rows.map(({ entry }) => entry))];
  const judgements = entries.flatMap((entry): RowJudgement[] => {
    const own = rows.filter((row) => row.entry === entry);
    const here = own.filter(({ place }) => unsaid || samePlace(place, planned.place));
    const elsewhere = own.filter((row) => !here.includes(row) && isOutside(row, planned));
    if (here.length === 0) return [{ id: entry, title: own[0]!.title, judgement: judgeWithoutRow(planned), elsewhere }];
    return here.map((row) => ({
      id: row.id,
      title: row.title,
      row,
      judgement: judgeRow(row, planned, today),
      elsewhere: row.seen === 'not-opened' ? elsewhere : [],
    }));
  });
  return judgements.sort((one, other) => place(one) - place(other));
}

/** The level of gravity of each state. */
export const stateSteps: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'act',
  ask: 'watch',
  'works-poorly': 'watch',
  'nothing-found': '',
};

const ORDER: readonly TreatmentState[] = ['ruled-out', 'works-poorly', 'nothing-found', 'ask'];
const place = ({ judgement: { state }, elsewhere }: RowJudgement): number => ORDER.indexOf(state) - (elsewhere.length > 0 ? 0.5 : 0);

function isOutside({ limits, poorOutside }: LabelRow, planned: Planned): boolean {
  return [...limits, ...poorOutside].map((limit) => againstLimit(limit, planned)).some(({ cold, warm }) => cold || warm);
}
