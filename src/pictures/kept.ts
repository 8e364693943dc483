/*
 * Picture cache: published pictures in a folder that builds share, so that a build makes only new ones. The key is a hash of the
 * original's bytes and of every setting that affects the result. Each file is compared with its own hash before use, so it cannot be
 * stale and a damaged one is made again.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { ok, type Correction, type Result } from '../../shared/result.ts';
import { cutDown, QUALITIES, TALLEST, WIDTHS, type Cut } from './cut-down.ts';

/** A file of the site's folder `pictures/`. */
export type PublishedFile = { name: string; width: number; height: number };
/** Widest first. */
export type Published = { files: PublishedFile[] };

export type PictureResult = Result<Published & { made: boolean }, Correction>;
type Record = Published & { digests: string[] };

const SETTINGS = JSON.stringify([1, WIDTHS, TALLEST, QUALITIES, sharp.versions]);

const digestOf = (...parts: (string | Buffer)[]): string =>
  parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest('hex');

/**
 * The published sizes of the picture at `path`, from the cache folder `kept`, or made now and stored there. `making` is called before a
 * picture is made.
 */
export async function published(path: string, cache: string, making: () => void = () => undefined): Promise<PictureResult> {
  const original = readFileSync(path);
  const stem = plainStem(path);
  const record = join(cache, `${stem}-${digestOf(SETTINGS, '\0', stem, '\0', original).slice(0, 32)}.json`);
  const held = recordAt(record, cache);
  if (held) return ok({ files: held.files, made: false });
  making();
  const cuts = await cutDown(original);
  if (!cuts.ok) return cuts;
  mkdirSync(cache, { recursive: true });
  const files = cuts.value.map((cut) => putBy(cut, stem, cache));
  whole(record, JSON.stringify({ files, digests: cuts.value.map(({ bytes }) => digestOf(bytes)) } satisfies Record));
  return ok({ files, made: true });
}

/** The name contains a hash of the bytes, so that a browser may cache it forever. */
function putBy({ bytes, width, height }: Cut, stem: string, cache: string): PublishedFile {
  const name = `${stem}-${width}-${digestOf(bytes).slice(0, 8)}.jpg`;
  whole(join(cache, name), bytes);
  return { name, width, height };
}

function recordAt(path: string, cache: string): Record | null {
  try {
    const record = JSON.parse(readFileSync(path, 'utf8')) as Record;
    return record.files.every(({ name }, index) => digestOf(readFileSync(join(cache, name))) === record.digests[index]) ? record : null;
  } catch {
    return null;
  }
}

/** Another build may read or write the same file, so the file is moved into place complete. */
function whole(path: string, content: string | Buffer): void {
  const half = `${path}.${process.pid}`;
  writeFileSync(half, content);
  renameSync(half, path);
}

/** The file's own name in characters that every host serves. */
export const plainStem = (path: string): string =>
  basename(path)
    .replace(/\.[^.]*$/, '')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-|-$/g, '') || 'picture';
