/* The club's label rows against what is planned: for the form and the worked example alike. */
import type { Day } from '../../../shared/days/day.ts';
import { judgeRow, judgeWithoutRow, samePlace, type Judged, type LabelRow, type Planned } from '../../../shared/treatments/label-row.ts';
import type { System } from '../parts/measures.ts';

export type ShownRow = LabelRow & {
  readonly entry: string;
  readonly id: string;
  readonly title: string;
  readonly form: string;
  readonly fromMemory: boolean;
  readonly note: number;
};

export type TreatmentFigures = { readonly units: System; readonly rows: readonly ShownRow[] };

/** `row` is left out where an ingredient has none for the place. */
export type JudgedRow = { readonly id: string; readonly title: string; readonly row?: ShownRow; readonly judged: Judged };

/** The rows of the place, and one line for each ingredient without any. Of no place said, all rows. */
export function judgeAll(planned: Planned, rows: readonly ShownRow[], today: Day): JudgedRow[] {
  const unsaid = planned.place.trim() === '';
  const entries = [...new Set(rows.map(({ entry }) => entry))];
  return entries.flatMap((entry): JudgedRow[] => {
    const own = rows.filter((row) => row.entry === entry);
    const here = own.filter(({ place }) => unsaid || samePlace(place, planned.place));
    if (here.length === 0) return [{ id: entry, title: own[0]!.title, judged: judgeWithoutRow(planned) }];
    return here.map((row) => ({ id: row.id, title: row.title, row, judged: judgeRow(row, planned, today) }));
  });
}
