/*
 * Reporter of Vitest: a table of the journeys by engine, printed after a run. With ALMANAC_RECORD a whole run is kept in RESULTS.md. An
 * engine that is not installed is named with the command that installs it, and never counted as passed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import type { Reporter, TestCase, TestModule } from 'vitest/node';
import { ENGINES, type EngineName } from './installed.ts';

interface Column {
  engine: EngineName;
  version: string;
  /** The command that installs it, where it is not there. */
  install: string;
  cells: Map<string, string>;
}

export default class Results implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const columns = ENGINES.map((engine) => columnOf(engine, tests)).filter((column) => column !== null);
    const lines = tableOf(columns);
    console.log(`\n${lines.join('\n')}`);
    if (process.env.ALMANAC_RECORD) this.record(columns, lines);
  }

  private record(columns: Column[], lines: string[]): void {
    if (columns.length < ENGINES.length) return console.error('Nothing is recorded: only a whole run is.');
    const day = new Date().toISOString().slice(0, 10);
    const head = [
      '# What ran in which engine',
      '',
      `${day}, by \`npm run test:engines -- --record\`, on ${systemName()}, Node ${process.versions.node}.`,
      'What differs between the engines, and what was not tried, is in [CONFORMANCE.md](../CONFORMANCE.md).',
      '',
    ];
    writeFileSync(new URL('RESULTS.md', import.meta.url), `${[...head, ...lines].join('\n')}\n`);
  }
}

function columnOf(engine: EngineName, tests: readonly TestCase[]): Column | null {
  const own = tests.filter(({ parent }) => parent.type === 'suite' && parent.name === engine);
  if (own.length === 0) return null;
  const column: Column = { engine, version: '', install: '', cells: new Map() };
  for (const test of own) {
    const { engine: ran, version = '', said } = test.meta();
    const result = test.result();
    if (!ran) {
      if (result.state === 'skipped') column.install = result.note ?? '';
      continue;
    }
    column.version = version;
    const word = result.state === 'skipped' ? `not here: ${result.note}` : result.state;
    column.cells.set(test.name, said ? `${word} (${said})` : word);
  }
  return column;
}

function tableOf(columns: readonly Column[]): string[] {
  const names = [...new Set(columns.flatMap(({ cells }) => [...cells.keys()]))];
  const head = columns.map(({ engine, version }) => `${engine} ${version}`.trim());
  const rows = names.map((name) => [name, ...columns.map(({ cells, install }) => cells.get(name) ?? (install ? 'not run' : ''))]);
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const missing = columns.filter(({ install }) => install !== '');
  return [
    line(['journey', ...head]),
    line(['---', ...head.map(() => '---')]),
    ...rows.map(line),
    ...missing.map(({ engine, install }) => `\n${engine} was not run here. To install it: \`${install}\``),
  ];
}

function systemName(): string {
  try {
    return /^PRETTY_NAME="(.*)"/m.exec(readFileSync('/etc/os-release', 'utf8'))![1]!;
  } catch {
    return process.platform;
  }
}
