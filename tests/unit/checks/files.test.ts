// A club's own files: what is refused in files/, by name and by first bytes, and the links to them. The first bytes of other kinds are
// those of their specifications: ELF and PE/COFF, ISO 32000-1 for PDF, APPNOTE for ZIP, ITU-T T.81 for JPEG, RTF 1.9.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { describe, test } from 'vitest';
import { check } from '../../../src/checks/check.ts';
import { fileFaults } from '../../../src/checks/names.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { MOST_MB, refusalOfFile } from '../../../src/source/club-file.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { withChanges, type Change } from '../../fixtures/invalid/cases.ts';

const PDF = '%PDF-1.4\n1 0 obj\n<</Type /Catalog>>\nendobj\ntrailer <</Root 1 0 R>>\n%%EOF';
const place = join(mkdtempSync(join(tmpdir(), 'files-')), 'form.pdf');

function refused(bytes: string | Buffer, mostMb = MOST_MB): string | null {
  writeFileSync(place, typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes);
  const found = refusalOfFile(place, mostMb);
  return found && `found ${found.found}; write ${found.write}`;
}

describe('by its bytes', () => {
  const form = readFileSync(join(projectFolder, 'content', 'demo-club', 'files', 'membership-form.pdf'));
  const AWAY = 'nothing, and take the file away: the almanac publishes no programs';
  const AGAIN = 'it saved as PDF once more by the program that made it';
  const SAVED = 'it saved as PDF by the program that made it';
  const PRINTED = 'it printed to a new PDF, which leaves that out; fields for typing go with it';

  test('a whole PDF is published', () => {
    assert.equal(refused(form), null);
    assert.equal(refused(PDF), null);
  });

  for (const [what, bytes, sentence] of [
    ['nothing', '', `found an empty file; write ${AGAIN}`],
    ['a Windows program', 'MZ\u0090\0', `found a program called .pdf; write ${AWAY}`],
    ['a Linux program', '\u007FELF\u0002', `found a program called .pdf; write ${AWAY}`],
    ['a script', '#!/bin/sh\n', `found a program called .pdf; write ${AWAY}`],
    ['a web page', '\u00EF\u00BB\u00BF <!DOCTYPE html>', 'found a web page called .pdf; write it printed as PDF'],
    ['a bare script element', '<script>', 'found a web page called .pdf; write it printed as PDF'],
    ['SVG', '<?xml version="1.0"?>\n<svg>', 'found a drawing of lines called .pdf; write it printed as PDF'],
    ['a word processor', 'PK\u0003\u0004', `found an archive or a file of a word processor called .pdf; write ${SAVED}`],
    ['RTF', '{\\rtf1', `found a file of a word processor called .pdf; write ${SAVED}`],
    ['a photograph', '\u00FF\u00D8\u00FF\u00E0', 'found a picture called .pdf; write it printed as PDF, or beside the page that shows it'],
    ['words', 'Dear member', `found a file that does not begin as a PDF does; write ${AGAIN}`],
    ['half a PDF', PDF.slice(0, 40), 'found a PDF that breaks off before its end; write a new copy of the file'],
    ['a password', PDF.replace('/Root', '/Encrypt 5 0 R /Root'), 'found a PDF with a password or with rights; write it saved without them'],
    [
      'JavaScript',
      PDF.replace('/Type', '/OpenAction <</S /JavaScript /JS (1)>> /Type'),
      `found a PDF that holds a program (JavaScript); write ${PRINTED}`,
    ],
    ['JavaScript in codes', PDF.replace('/Type', '/J#53 (1) /Type'), `found a PDF that holds a program (JavaScript); write ${PRINTED}`],
    ['a launch', PDF.replace('/Type', '/A <</S /Launch /F (a.exe)>> /Type'), `found a PDF that starts another program; write ${PRINTED}`],
    [
      'files inside',
      PDF.replace('/Type', '/Names <</EmbeddedFiles 7 0 R>> /Type'),
      `found a PDF that carries other files inside; write ${PRINTED}`,
    ],
    [
      'a form that sends',
      PDF.replace('/Type', '/A <</S /SubmitForm>> /Type'),
      `found a PDF that sends what is typed into it to another computer; write ${PRINTED}`,
    ],
  ] as const)
    test(`${what}: a sentence`, () => assert.equal(refused(bytes), sentence));

  const stream = (dictionary: string, bytes: Buffer): Buffer =>
    Buffer.concat([
      Buffer.from(PDF.slice(0, 9)),
      Buffer.from(`2 0 obj\n<<${dictionary}>>\nstream\n`),
      bytes,
      Buffer.from(`\nendstream\nendobj\n${PDF.slice(9)}`),
    ]);

  test('a program in a packed list of objects is found; the bytes of a picture are none', () => {
    const objects = deflateSync('5 0 <</S /JavaScript /JS (app.alert(1))>>');
    assert.match(refused(stream('/Type /ObjStm /N 1 /First 4 /Filter /FlateDecode', objects))!, /holds a program/);
    assert.equal(refused(stream('/Subtype /Image', Buffer.from('/JS /Launch'))), null);
  });

  test('its size is limited, and club.yaml may allow more', () => {
    const large = Buffer.concat([Buffer.from(PDF.slice(0, 9)), Buffer.alloc(6_240_000, '\n'), Buffer.from(PDF.slice(9))]);
    assert.equal(
      refused(large),
      'found 6.3 MB, more than the 5 of a file; write it saved with smaller pictures, or "largest-file-mb: 7" in club.yaml',
    );
    assert.equal(refused(large, 7), null);
  });
});

describe('by its name', () => {
  for (const [name, sentence] of [
    ['form.pdf', undefined],
    ['form.yaml', undefined],
    ['setup.exe', 'the ending ".exe", a program; write nothing, and take the file away: the almanac publishes no programs'],
    ['count.js', 'the ending ".js", a program; write nothing, and take the file away: the almanac publishes no programs'],
    ['page.html', 'the ending ".html", which can hold a program; write it printed as PDF, or its words in a page'],
    ['bee.svg', 'the ending ".svg", which can hold a program; write it printed as PDF, or its words in a page'],
    ['letter.docx', 'the ending ".docx", which many phones cannot open; write it saved as PDF, or its words in a page'],
    ['hive.jpg', 'the ending ".jpg", a picture; write it beside the page that shows it, or printed as PDF'],
    ['all.zip', 'the ending ".zip", which is not published; write it saved as PDF'],
    ['Form.PDF', 'the ending ".PDF"; write ".pdf"'],
    ['form', '"form", a name without an ending; write "form.pdf" where it is a PDF'],
    ['Join form (2).pdf', '"Join form (2)", which hosts and addresses cannot carry safely; write "join-form-2.pdf"'],
    ['more/form.pdf', 'a file in a folder below the collection; write it straight in files/'],
  ] as const)
    test(`files/${name}: ${sentence ? 'a sentence' : 'it is published'}`, () => {
      const [fault] = fileFaults(`files/${name}`);
      assert.equal(fault && `${fault.found}; write ${fault.write}`.replace(/ for a page of its own.*/, ''), sentence);
    });
});

describe('in a club', () => {
  const sting = (link: string): Change => ({
    file: 'articles/stings.mdx',
    insteadOf: 'Scrape it off.',
    write: `See [the form](${link}). Scrape it off.`,
  });
  const faultsOf = (changes: readonly Change[]): string[] =>
    withChanges(changes, (directory) => check(directory).map(formatDiagnostic)).map((line) => line.replace(/^[^ ]+ /, ''));
  const join2: Change = { file: 'files/joining-form.pdf', write: PDF };
  const levy: Change = { file: 'files/levy-sheet.pdf', write: PDF };

  test('a link to a file is good, with a page of it too, and so is a file without a link', () => {
    for (const link of ['/files/joining-form.pdf', '/files/joining-form.pdf#page=2'])
      assert.deepEqual(faultsOf([join2, levy, sting(link)]), []);
  });

  for (const [what, files, link, sentence] of [
    [
      'a misspelt file',
      [join2, levy],
      '/files/joning-form.pdf',
      '"/files/joning-form.pdf", while files/ has "joining-form.pdf"; write "/files/joining-form.pdf"',
    ],
    [
      'a renamed file',
      [join2, levy],
      '/files/club-joining-2027.pdf',
      '"/files/club-joining-2027.pdf", while files/ has "joining-form.pdf"; write "/files/joining-form.pdf"',
    ],
    [
      'a file that nothing is near to',
      [join2, levy],
      '/files/rules.pdf',
      '"/files/rules.pdf", which is not in files/; write the address of one that is there: /files/joining-form.pdf, /files/levy-sheet.pdf',
    ],
    [
      'a file of none',
      [],
      '/files/rules.pdf',
      '"/files/rules.pdf", which is not in files/; write "/files/rules.pdf", and put the PDF into the folder files/ of the club under that name',
    ],
    ['a bare name', [join2], 'joining-form.pdf', '"joining-form.pdf"; write "/files/joining-form.pdf"'],
    ['a path', [join2], '../files/joining-form.pdf#page=2', '"../files/joining-form.pdf#page=2"; write "/files/joining-form.pdf#page=2"'],
    ['a slash at the end', [join2], '/files/joining-form.pdf/', '"/files/joining-form.pdf/"; write "/files/joining-form.pdf"'],
    [
      'capitals',
      [join2],
      '/files/Joining-Form.pdf',
      '"/files/Joining-Form.pdf", while files/ has "joining-form.pdf"; write "/files/joining-form.pdf"',
    ],
    [
      'no ending',
      [join2],
      '/files/joining-form',
      '"/files/joining-form", while files/ has "joining-form.pdf"; write "/files/joining-form.pdf"',
    ],
    [
      'the folder',
      [join2],
      '/files/',
      '"/files/", which is no page; write "/club/#files", where all files are listed, or the address of one of them',
    ],
  ] as const)
    test(`a link to ${what}: a sentence`, () => assert.deepEqual(faultsOf([...files, sting(link)]), [`link: a link: found ${sentence}`]));

  test('a description without its PDF, and a faulty one', () => {
    assert.deepEqual(faultsOf([join2, { file: 'files/joining-from.yaml', write: 'title: Joining' }]), [
      'club-file: the file: found no "joining-from.pdf" beside it; write the PDF into files/ under that name (there is "joining-form.pdf"), or take this file away',
    ]);
    assert.match(faultsOf([join2, { file: 'files/joining-form.yaml', write: 'titel: Joining' }]).join('\n'), /title/);
  });

  test('its title is that of its description, or is made from its name', () => {
    const titles = withChanges([join2, levy, { file: 'files/levy-sheet.yaml', write: 'title: The levy of 2027' }], (directory) =>
      readFolder(directory).entries.flatMap(({ collection, fields, body }) =>
        collection === 'files' ? [[(fields.value as { title: string }).title, Number(body) > 50]] : [],
      ),
    );
    assert.deepEqual(titles.sort(), [
      ['Joining form', true],
      ['The levy of 2027', true],
    ]);
  });
});
