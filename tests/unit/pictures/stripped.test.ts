// Metadata of an original (place, time, camera, author) is removed: only its pixels are published.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import sharp from 'sharp';
import { unwrap } from '../../../shared/result.ts';
import { cutDown } from '../../../src/pictures/cut-down.ts';
import { flat } from './made.ts';

const TELLS = [
  'Exif',
  'GPS',
  'Trailcam',
  'Secret meadow',
  '2026:04:18',
  'ns.adobe.com',
  'Photoshop',
  'ICC_PROFILE',
  'ftypmp42',
  'a note',
  'MPF',
];

/** A segment of a JPEG file (ITU-T T.81, B.1.1): marker, length, content. */
const segment = (marker: number, content: string): Buffer => {
  const bytes = Buffer.from(content, 'latin1');
  return Buffer.concat([Buffer.from([0xff, marker, (bytes.length + 2) >> 8, (bytes.length + 2) & 255]), bytes]);
};

/**
 * A phone's metadata (place, camera, time, profile), and additions of programs and phones: IPTC, a comment, a second picture's list, a
 * film after the end.
 */
async function tellingPhoto(): Promise<Buffer> {
  const photo = await flat(800, 600, [120, 140, 90])
    .withExif({
      IFD0: { Make: 'Trailcam', Model: 'Trailcam 7', DateTime: '2026:04:18 10:00:00' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '41/1 5/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '81/1 31/1 0/1' },
    })
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:City="Secret meadow"/></rdf:RDF></x:xmpmeta>',
    )
    .withIccProfile('p3')
    .jpeg()
    .toBuffer();
  const added = [
    segment(0xed, 'Photoshop 3.0\0' + '8BIM\x04\x04\0\0\0\0\0\x0eSecret meadow '),
    segment(0xfe, 'a note'),
    segment(0xe2, 'MPF\0II*\0'),
  ];
  return Buffer.concat([photo.subarray(0, 2), ...added, photo.subarray(2), Buffer.from('\0\0\0\x18ftypmp42a film', 'latin1')]);
}

/** The markers of a JPEG file up to its image data, and whether anything follows its end. */
function markersOf(bytes: Buffer): { markers: string[]; ends: boolean } {
  const markers: string[] = [];
  let at = 2;
  while (bytes[at + 1] !== 0xda) {
    assert.equal(bytes[at], 0xff);
    markers.push(bytes[at + 1]!.toString(16));
    at += 2 + bytes.readUInt16BE(at + 2);
  }
  return {
    markers,
    ends: bytes.subarray(-2).equals(Buffer.from([0xff, 0xd9])) && bytes.indexOf(Buffer.from([0xff, 0xd9])) === bytes.length - 2,
  };
}

test('the original contains all of it', async () => {
  const photo = await tellingPhoto();
  for (const tells of TELLS.filter((each) => each !== 'GPS')) assert.ok(photo.includes(tells), tells);
  const { exif, xmp, icc, iptc } = await sharp(photo).metadata();
  assert.ok(exif && xmp && icc && iptc);
  // Tag 0x8825 of the first directory points at the GPS directory (Exif 2.32).
  assert.ok(exif.includes(Buffer.from([0x25, 0x88])) || exif.includes(Buffer.from([0x88, 0x25])), 'a place');
});

test('nothing of it is published', async () => {
  const cuts = unwrap(await cutDown(await tellingPhoto()));
  assert.equal(cuts.length, 2);
  for (const { bytes } of cuts) {
    for (const tells of TELLS) assert.ok(!bytes.includes(tells), tells);
    const { exif, xmp, icc, iptc, orientation, density, comments } = await sharp(bytes).metadata();
    assert.deepEqual(
      { exif, xmp, icc, iptc, orientation, comments },
      { exif: undefined, xmp: undefined, icc: undefined, iptc: undefined, orientation: undefined, comments: undefined },
    );
    assert.equal(density, 72, 'no scale of its own');
    const { markers, ends } = markersOf(bytes);
    // e0 JFIF, db tables, c2 a progressive frame, c4 codes; no e1 to ef, no fe.
    assert.deepEqual(
      markers.filter((marker) => !['e0', 'db', 'c2', 'c4'].includes(marker)),
      [],
    );
    assert.ok(ends, 'nothing behind the end');
  }
});
