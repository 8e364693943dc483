/* Checks the values of a calculator in a link or an Example: each has a name that its form has, and a value that the form takes. */
import { calculatorInputs, inputWrong } from '../schemas/calculator-inputs.ts';
import { calculatorNames, type Calculator } from '../schemas/calculators.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { attribute, type TagNode } from '../source/prose.ts';
import { decode, readAddress } from '../../shared/address/address.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { atNode, type Message, type Page } from './place.ts';

type Wrong = Pick<Message, 'found' | 'write'>;

/** `name=value&name=value`, as the calculators write it. */
const VALUES = /^[a-z][a-z0-9-]*=[^&=\s]*(?:&[a-z][a-z0-9-]*=[^&=\s]*)*$/;

/** `mark`: "#" before the values in an address. */
export function valuesWrong(slug: string | undefined, values: string, mark = ''): Wrong[] {
  if (!VALUES.test(values))
    return [{ found: `"${mark}${values}"`, write: `values as name=value, joined by &, such as "${mark}sugar-parts=2&water-parts=1"` }];
  const inputs = calculatorInputs[slug as Calculator['slug']];
  if (inputs === undefined) return [];
  const names = Object.keys(inputs);
  const { values: typed, unknown, repeated } = readAddress(values, names);
  return [
    ...unknown.map((name) => {
      const near = names.filter((each) => each.startsWith(`${name}-`));
      return {
        found: `"${name}", which the calculator ${slug} does not ask for`,
        write: near.length === 1 ? `"${near[0]!}"` : nearOrAll(name, names),
      };
    }),
    ...repeated.map((name) => ({ found: `"${name}" twice`, write: 'it once' })),
    ...[...typed].flatMap(([name, value]): Wrong[] => {
      const write = inputWrong(inputs[name]!, decode(value));
      return write === null ? [] : [{ found: `"${name}=${value}"`, write: `"${name}=" and ${write}` }];
    }),
  ];
}

export function exampleFaults(page: Page, tag: TagNode): Diagnostic[] {
  const [tool, values] = [attribute(tag, 'tool'), attribute(tag, 'with')];
  const wrongTool: Wrong[] =
    tool === undefined || calculatorNames.includes(tool)
      ? []
      : [{ found: `"${tool}", which is no calculator`, write: nearOrAll(tool, calculatorNames) }];
  return [
    ...wrongTool.map((wrong) => atNode(page, tag, { rule: 'reference', field: 'Example, tool', ...wrong })),
    ...(values === undefined ? [] : valuesWrong(tool, values)).map((wrong) =>
      atNode(page, tag, { rule: 'link', field: 'Example, with', ...wrong }),
    ),
  ];
}
