/* Writes the file of a new entry, never over another, and always under a name that a host can serve. */
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { dayIn } from '../../checks/corrections.ts';
import { fileFaults, sameName } from '../../checks/names.ts';
import { decode } from '../../source/decode.ts';
import { collections, type Collection } from '../../schemas/collections.ts';
import { HAZARDS } from '../../schemas/cautions.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { nearName } from '../../../shared/words/near-name.ts';
import type { Given } from './field-lines.ts';
import { nameFor } from './file-name.ts';
import { singular } from './kinds.ts';
import { mayBeDraft, template } from './template.ts';

export type File = { path: string; text: string };

/** The field that contains the title. */
const TITLED: Partial<Record<Collection, string | null>> = { words: 'word', cautions: null };

/** The files of an entry with this title, the one to fill in first, or the sentence for a title that makes no file. */
export function draftOf(collection: Collection, title: string): Result<[File, ...File[]], string> {
  const typed = title.replace(/\s+/g, ' ').trim();
  const [, date, rest] = (collection === 'meetings' && /^(\d{1,2}[-./]\d{1,2}[-./]\d{2,4})[ ,:]+(.+)$/.exec(typed)) || [];
  const day = date === undefined ? null : dayIn(date);
  if (date !== undefined && day === null)
    return err(`"${date}" could be two days, or none. Write the day as in: npm run new -- meeting "2026-05-16 ${rest}".`);
  const words = day === null ? typed : `${day} ${rest}`;
  if (words === '') return err(`The title is blank. Write one in quotes: npm run new -- ${singular(collection)} "Swarm season".`);
  const name = nameFor(words);
  if (name === null) return err(`"${words}" has no letter or digit for a file's name. Write a title with some of a to z or 0 to 9.`);
  if (collection === 'cautions' && !(HAZARDS as readonly string[]).includes(name)) {
    const near = nearName(name, HAZARDS);
    return err(
      near ? `There is no hazard "${words}"; did you mean ${near}?` : `A caution is named after its hazard, one of: ${HAZARDS.join(', ')}.`,
    );
  }
  const path = `${collection}/${name}${collections[collection].ending}`;
  const [fault] = fileFaults(path);
  if (fault) return err(`"${words}" would make ${fault.found}. Write a title that makes ${fault.write}.`);
  const text = template(collection, givenFrom(collection, words));
  const decoded = decode(path, Buffer.from(text));
  if (!decoded.ok) return err(`The title holds ${decoded.reason.found}. Write ${decoded.reason.write}.`);
  const lines = collection === 'drawings' ? [{ path: path.replace(/yaml$/, 'svg'), text: LINES }] : [];
  return ok([{ path, text }, ...lines]);
}

const LINES = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 342 200">\n</svg>\n';

/** "2026-05-16 Yard day" is a meeting's day and its title. */
function givenFrom(collection: Collection, title: string): Given {
  const field = collection in TITLED ? TITLED[collection] : 'title';
  const [, day, rest] = (collection === 'meetings' && /^(\d{4}-\d\d-\d\d)[ ,:]+(.+)$/.exec(title)) || [];
  return { ...(field ? { [field]: rest ?? title } : {}), ...(day ? { day } : {}), ...(mayBeDraft(collection) ? { draft: true } : {}) };
}

/** The file in `directory` with this name, in any case, or undefined. */
export function taken(directory: string, path: string): string | undefined {
  const folder = dirname(path);
  const there = existsSync(join(directory, folder)) ? readdirSync(join(directory, folder)) : [];
  return there.map((name) => `${folder}/${name}`).find((other) => sameName(other) === sameName(path));
}

/** Writes files that do not exist yet: all of them, or none and the disk's own error. */
export function write(directory: string, files: readonly File[]): void {
  const written: string[] = [];
  try {
    for (const { path, text } of files) {
      mkdirSync(dirname(join(directory, path)), { recursive: true });
      writeFileSync(join(directory, path), text, { flag: 'wx' });
      written.push(path);
    }
  } catch (error) {
    for (const path of written) rmSync(join(directory, path), { force: true });
    throw error;
  }
}
