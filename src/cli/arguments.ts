// Parses the arguments of a command. Every mistake becomes one sentence that says what to type instead. Only `argumentsOf` prints or ends
// the program.
import { isAbsolute, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Day } from '../../shared/days/day.ts';
import { commands, type Command, type CommandName, type Option } from './commands.ts';
import { err, ok, type Refused, type Result } from '../../shared/result.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { mistakeIn } from './option-values.ts';
import { clubNear } from './club-near.ts';
import { isInstalled, projectFolder, whereThePersonStands } from './paths.ts';

type OptionsOf<Name extends CommandName> = (typeof commands)[Name]['options'];
type ValueOf<One> = One extends { takes: 'flag' }
  ? boolean
  : One extends { takes: 'day' }
    ? Day | undefined
    : One extends { otherwise: string }
      ? string
      : string | undefined;
export type Values<Name extends CommandName> = { -readonly [Key in keyof OptionsOf<Name>]: ValueOf<OptionsOf<Name>[Key]> };

type Arguments<Name extends CommandName> = { values: Values<Name>; words: string[] };
type Message = { help: boolean; sentence: string };

export function readArguments<Name extends CommandName>(
  name: Name,
  typed: readonly string[],
  environment: NodeJS.ProcessEnv = process.env,
): Result<Arguments<Name>, Message> {
  const command: Command = commands[name];
  const { tokens } = parseArgs({ args: [...typed], options: parserOptions(command), strict: false, allowPositionals: true, tokens: true });
  const given = new Map<string, string | true>();
  const words: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    if (token.name === 'help') return err({ help: true, sentence: helpFor(name, command) });
    const option = command.options[token.name];
    if (!option) return wrong(noSuchOption(token.rawName, name, command));
    if (given.has(token.name)) return wrong(`${token.rawName} is given twice.`);
    const mistake = mistakeIn(token.rawName, option.takes, token.value, token.inlineValue === true);
    if (mistake) return wrong(mistake);
    given.set(token.name, token.value ?? true);
  }
  const swallowed = Object.keys(command.options).find((key) => !given.has(key) && takenByNpm(key, environment));
  if (swallowed)
    return wrong(
      `npm kept --${swallowed} for itself. Write two dashes before the options: ${lineFor(name)} -- --${swallowed}${exampleOf(command.options[swallowed]!)}`,
    );
  // `new article Swarm season`: the last argument of a command takes all remaining words.
  if (words.length > command.words.length && command.words.at(-1)?.startsWith('"'))
    return wrong(
      `Put all the words of the ${wordIn(command.words.at(-1)!)} in quotes: npm run ${name} -- ${words.slice(0, command.words.length - 1).join(' ')} "${words
        .slice(command.words.length - 1)
        .join(' ')
        .replace(/['"]/g, '')}".`,
    );
  if (words.length > command.words.length)
    return wrong(`${name} does not know what to do with "${words[command.words.length]}". ${helpFor(name, command)}`);
  // The demo club of an installed package is not the person's own.
  if (isInstalled && 'content' in command.options && !given.has('content') && !(name === 'new' && words[0] === 'club')) {
    const near = clubNear(whereThePersonStands(environment));
    if (near === null)
      return wrong(
        `There is no club's folder here, or more than one. Write it after --content, as in --content our-club, or begin one: npm run new -- club our-club. The demo club is in ${join(projectFolder, 'content', 'demo-club')}.`,
      );
    given.set('content', near);
  }
  const values = Object.fromEntries(
    Object.entries(command.options).map(([key, option]) => [key, valueOf(option, given.get(key), environment)]),
  );
  return ok({ values: values as Values<Name>, words });
}

/** For the first line of a command: the parsed arguments. Otherwise it prints the sentence and ends the program (0 for --help, else 2). */
export function argumentsOf<Name extends CommandName>(name: Name): Arguments<Name> {
  const read = readArguments(name, process.argv.slice(2));
  if (read.ok) return read.value;
  const { help, sentence } = read.reason;
  (help ? console.log : console.error)(sentence);
  process.exit(help ? 0 : 2);
}

const wrong = (sentence: string): Refused<Message> => err({ help: false, sentence });

function parserOptions(command: Command): Record<string, { type: 'string' | 'boolean' }> {
  return Object.fromEntries(
    Object.entries(command.options).map(([key, { takes }]) => [key, { type: takes === 'flag' ? 'boolean' : 'string' }]),
  );
}

function valueOf(option: Option, given: string | true | undefined, environment: NodeJS.ProcessEnv): string | boolean | undefined {
  if (option.takes === 'flag') return given === true;
  if (option.takes !== 'folder' && option.takes !== 'output' && option.takes !== 'file')
    return (given as string | undefined) ?? option.otherwise;
  if (given === undefined) return option.otherwise && resolve(projectFolder, option.otherwise);
  return isAbsolute(given as string) ? (given as string) : resolve(whereThePersonStands(environment), given as string);
}

// `npm run build --content club`, without the two dashes, sets this variable and passes `club` alone.
function takenByNpm(key: string, environment: NodeJS.ProcessEnv): boolean {
  return environment[`npm_config_${key.replaceAll('-', '_')}`] !== undefined;
}

function noSuchOption(rawName: string, name: CommandName, command: Command): string {
  const near = nearName(rawName.replace(/^-+/, ''), Object.keys(command.options));
  return near ? `There is no option ${rawName}; did you mean --${near}?` : `There is no option ${rawName}. ${helpFor(name, command)}`;
}

function helpFor(name: CommandName, command: Command): string {
  const options = Object.entries(command.options).map(([key, option]) => `--${key}${exampleOf(option)} (${option.what})`);
  const words = command.words.length > 0 ? ` ${command.words.join(' ')}` : '';
  if (options.length === 0 && words === '') return `${name} takes no options.`;
  return `${name} takes${words}${words && options.length ? ' and' : ''}${options.length ? ` ${options.join(', ')}` : ''}.`;
}

/** `"Title"` is called the title, `"why"` the reason. */
const wordIn = (quoted: string): string => (quoted === '"why"' ? 'reason' : quoted.replaceAll('"', '').toLowerCase());

function exampleOf({ takes }: Option): string {
  if (takes === 'flag') return '';
  if (typeof takes !== 'string') return ` ${takes.join('|')}`;
  return ` ${{ folder: 'my-club', output: 'OUTPUT', file: 'table.csv', words: '"disease officer"', day: '2026-05-01', base: '/club/', site: 'https://club.example' }[takes]}`;
}

function lineFor(name: CommandName): string {
  return name === 'start' || name === 'test' ? `npm ${name}` : `npm run ${name}`;
}
