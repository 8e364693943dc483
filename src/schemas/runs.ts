/*
 * The file in which a reader carries her lists away, as other programs may read it: published as /open/runs.schema.json.
 * The page that writes it (client/checklist/files.ts) carries no schema; a test holds what it writes against this one.
 */
import { z } from 'astro/zod';

const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const byStep = z.record(z.string().describe('the permanent id of a step'), z.string());

const tick = z.looseObject({
  on: day.describe('the day it was ticked'),
  of: z.string().describe('a print of the words it was ticked on; empty where unknown'),
});

const run = z.looseObject({
  name: z.string().describe('the name the reader gave; may be empty'),
  day: day.optional().describe('her own day, from which dates are counted'),
  choices: z.record(z.string(), z.string()).optional().describe('what she said of her start'),
  ticks: z.record(z.string().describe('the permanent id of a step'), tick),
  notes: byStep.optional(),
  asked: byStep.optional().describe('whom she asked, at steps where the list pauses'),
  filed: day.optional().describe('the day the run was filed'),
});

export const savedRuns = z.strictObject({
  format: z.literal('almanac-runs'),
  version: z.int().min(1),
  club: z.string().describe('the id of the club'),
  saved: day,
  yard: z.string().optional().describe("the yard's address, in the reader's words"),
  lists: z.record(
    z.string().describe('the id of a checklist'),
    z.looseObject({ open: z.string().describe('the id of the run that is shown'), runs: z.record(z.string(), run) }),
  ),
});

/** The JSON Schema (2020-12) of the file. */
export const savedRunsSchema = (): object => z.toJSONSchema(savedRuns, { target: 'draft-2020-12' });
