// An unpublishable picture stops the build with its name and a correction, never with a stack. One with an odd name is shown.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import sharp from 'sharp';
import { checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { preparePictures } from '../../../src/pictures/prepare.ts';
import { formatDiagnostic, inReadingOrder } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';
import { flat, heicHead, noise } from './made.ts';

const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const [club, kept] = [join(folder, 'club'), join(folder, 'kept')];
cpSync(goodClub, club, { recursive: true });
const page = join(club, 'bulletins', 'varroa.mdx');
const words = readFileSync(page, 'utf8');

type Seen = { faults: string[]; hints: string[]; pictures: string[] };

/** The good club with a file beside its bulletin, which shows it under `written`. */
async function seenWith(name: string, bytes: Buffer, written = name, also: (path: string) => void = () => undefined): Promise<Seen> {
  const path = join(club, 'bulletins', name);
  writeFileSync(path, bytes);
  also(path);
  writeFileSync(
    page,
    words.replace('](mite.png)', () => `](${written})`),
  );
  const read = readFolder(club);
  const { pictures, faults } = await preparePictures(read, kept);
  const seen = {
    faults: inReadingOrder([...checkFolder(read), ...faults]).map(formatDiagnostic),
    hints: hintsOf(read).map(formatDiagnostic),
    pictures: [...pictures.keys()],
  };
  rmSync(path);
  return seen;
}

const photo = await noise(900, 700).blur(1.5).jpeg({ quality: 90 }).toBuffer();
const large = await noise(2000, 1500).jpeg({ quality: 60 }).toBuffer();
const png = await flat(300, 200, [90, 70, 50]).png().toBuffer();
const DAMAGED =
  'a picture that breaks off or is damaged; write the picture copied once more from where it was taken, or exported again as JPEG';
const EXPORT = 'write the picture exported as JPEG';

const moving = (): Promise<Buffer> =>
  sharp(Buffer.concat(Array.from({ length: 3 }, (_, frame) => Buffer.alloc(300 * 200 * 3, 60 + frame * 60))), {
    raw: { width: 300, height: 600, channels: 3, pageHeight: 200 },
  })
    .gif({ delay: [100, 100, 100] })
    .toBuffer();

const refused: readonly [name: string, bytes: Buffer, found: string][] = [
  ['phone.jpg', heicHead(), `a HEIC picture called .jpg; ${EXPORT}`],
  ['phone.jpeg', heicHead('mif1'), `a HEIC picture called .jpeg; ${EXPORT}`],
  ['phone.heic', heicHead('heix'), `a HEIC picture; ${EXPORT}`],
  [
    'film.jpg',
    Buffer.concat([Buffer.from('\0\0\0\x18ftypmp42', 'latin1'), Buffer.alloc(300)]),
    `a file that is no picture of a kind that is read here; ${EXPORT}`,
  ],
  ['empty.jpg', Buffer.alloc(0), `an empty file; ${EXPORT}`],
  [
    'page.jpg',
    Buffer.from('<!DOCTYPE html><html><body>Not found</body></html>'),
    'a web page called .jpg; write the picture itself, saved from that page with the leave of who made it',
  ],
  ['letter.jpg', Buffer.from('%PDF-1.7 ...'), `a PDF called .jpg; ${EXPORT}`],
  [
    'lines.png',
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
    'a drawing of lines; write it in drawings/ with a file of words, and <Drawing name="..." /> in the page',
  ],
  ['words.jpg', Buffer.from('not a picture'), `a file that is no picture of a kind that is read here; ${EXPORT}`],
  ['half.jpg', photo.subarray(0, photo.length / 2), DAMAGED],
  ['head.jpg', photo.subarray(0, 300), DAMAGED],
  ['tail.jpg', photo.subarray(0, photo.length - 4000), DAMAGED],
  ['large.jpg', large.subarray(0, large.length - 4000), DAMAGED],
  ['half.png', png.subarray(0, png.length - 30), DAMAGED],
  ['holed.png', Buffer.concat([png.subarray(0, 60), Buffer.alloc(40, 7), png.subarray(100)]), DAMAGED],
  [
    'preview.jpg',
    await flat(160, 120, [1, 2, 3]).jpeg().toBuffer(),
    '160 × 120 pixels, too small to be read; write the picture itself and not its preview: 240 × 120 or more',
  ],
  [
    'strip.png',
    await flat(300, 6000, [1, 2, 3]).png().toBuffer(),
    '300 × 6000 pixels, a strip too narrow to be read on a phone; write the part that matters, at most 4 times as long one way as the other',
  ],
  ['moving.gif', await moving(), 'a moving picture of 3 frames; write one still picture, exported as JPEG'],
  [
    'vast.png',
    await flat(16000, 8000, [1, 2, 3]).png().toBuffer(),
    '16000 × 8000 pixels, more than can be read; write the picture made about 4000 pixels wide',
  ],
];

for (const [name, bytes, found] of refused) {
  test(`${name} of ${bytes.length} bytes: ${found.split(';')[0]}`, async () => {
    const { faults, pictures } = await seenWith(name, bytes);
    assert.deepEqual(faults, [`bulletins/${name}:1:1 picture: the file: found ${found}`]);
    assert.deepEqual(pictures, []);
  });
}

test('a file above the limit is refused without being read', async () => {
  const { faults } = await seenWith('scan.tif', Buffer.from('II*\0'), 'scan.tif', (path) => truncateSync(path, 41_000_001));
  assert.deepEqual(faults, [
    'bulletins/scan.tif:1:1 picture: the file: found 42 MB, more than the 30 that are read; write the picture exported as JPEG, made about 4000 pixels wide',
  ]);
});

/** Names from phones, scanners and Windows, and the ways in which an author may write them. */
for (const [name, written] of [
  ['IMG_2034.JPG', 'IMG_2034.JPG'],
  ['IMG_2034.JPG', './IMG_2034.JPG'],
  ['IMG_2034.JPG', '.\\IMG_2034.JPG'],
  ['my mite.jpg', 'my mite.jpg'],
  ['my mite.jpg', 'my%20mite.jpg'],
  ['my mite.jpg', './my mite.jpg "Seen in May"'],
  ['Foto (1).jpg', 'Foto (1).jpg'],
  ['50%.jpg', '50%.jpg'],
  ['50%25.jpg', '50%25.jpg'],
  ['a#b.jpg', 'a#b.jpg'],
  ['a{b}.jpg', 'a{b}.jpg'],
  ['Königin.jpg', 'Königin.jpg'],
  ['Ko\u0308nigin.jpg', 'Königin.jpg'],
  ['renamed.png', 'renamed.png'],
  ['scan.jfif', 'scan.jfif'],
] as const) {
  test(`${name} written ![...](${written}) is shown`, async () => {
    const { faults, hints, pictures } = await seenWith(name, photo, written);
    assert.deepEqual(faults, []);
    assert.deepEqual(pictures, [`bulletins/${name}`]);
    assert.deepEqual(hints, [
      'bulletins/mite.png:1:1 picture: the file: found a picture that no page shows; write ![what it shows](mite.png) in a page of bulletins/, or take it away',
    ]);
  });
}
