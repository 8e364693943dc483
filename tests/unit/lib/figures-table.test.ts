// The CSV file of the figures: RFC 4180 (a cell with a comma or a quote is quoted, quotes are doubled, lines end in CR LF).
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { figuresTable } from '../../../src/lib/figures-table.ts';
import { aDay } from '../../days.ts';
import { almanacOf, figure, row, source } from './almanac.ts';

test('a line for each row, with unit, source and review in columns of their own', () => {
  const rows = [row('state', { least: 1, most: 3, note: 'Called "safe", and not' }), row('older', { value: 2, until: '2024-12-31' })];
  const almanac = almanacOf({
    figures: { level: figure(rows, { title: 'Level', subject: 'mites' }) },
    sources: {
      extension: source('A university', {
        year: 2012,
        title: 'Leaflet',
        page: 'page 2',
        url: 'https://example.org/a',
        opened: aDay('2026-04-01'),
      }),
    },
  });
  const lines = figuresTable(almanac, aDay('2026-05-01')).split('\r\n');
  assert.equal(
    lines[0],
    'figure,title,subject,row,followed,value,least,most,unit,place,holds_in,method,phases,from,until,certainty,note,source,source_who,source_title,source_year,source_where,source_publisher,source_page,source_url,source_opened,source_kind,source_seen,checked,next_check,edition',
  );
  assert.deepEqual(lines.slice(1), [
    'level,Level,mites,state,yes,,1,3,days,Ohio,anywhere,,,2020-01-01,,likely,"Called ""safe"", and not",extension,A university,Leaflet,2012,,,page 2,https://example.org/a,2026-04-01,paper,itself,2026-01-10,2027-01-10,2026-05-01',
    'level,Level,mites,older,no,2,,,days,Ohio,anywhere,,,2020-01-01,2024-12-31,likely,,extension,A university,Leaflet,2012,,,page 2,https://example.org/a,2026-04-01,paper,itself,2026-01-10,2027-01-10,2026-05-01',
    '',
  ]);
});
