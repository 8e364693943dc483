/* The part of JSON Schema that our own schemas use, for tests that validate files. */
/** The errors of a value. A keyword that is not implemented here is a mistake of the test. */
export function wrong(schema: any, value: any, path: string): string[] {
  const known = [
    '$schema',
    'description',
    'examples',
    'type',
    'properties',
    'required',
    'additionalProperties',
    'items',
    'enum',
    'pattern',
    'minItems',
    'minimum',
    'maximum',
    'format',
    'const',
    'anyOf',
    'allOf',
    '$defs',
    'exclusiveMinimum',
    'maxItems',
  ];
  const strange = Object.keys(schema).filter((key) => !known.includes(key));
  if (strange.length > 0) throw new Error(`${path}: the test does not know ${strange.join(', ')}`);
  const kind = value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value;
  const faults: string[] = (schema.allOf ?? []).flatMap((each: any) => wrong(each, value, path));
  if (schema.type === 'integer' ? !Number.isInteger(value) : schema.type && schema.type !== kind)
    return [`${path} is ${kind}, not ${schema.type}`];
  if (schema.enum && !schema.enum.includes(value)) faults.push(`${path} is ${value}`);
  if (schema.pattern && !new RegExp(schema.pattern, 'u').test(value)) faults.push(`${path} is "${value}", not as ${schema.pattern}`);
  if (schema.minItems !== undefined && value.length < schema.minItems) faults.push(`${path} has ${value.length}`);
  if (schema.maxItems !== undefined && value.length > schema.maxItems) faults.push(`${path} has ${value.length}`);
  if ('const' in schema && value !== schema.const) faults.push(`${path} is ${value}`);
  if (
    kind === 'number' &&
    (value < (schema.minimum ?? -Infinity) || value > (schema.maximum ?? Infinity) || value <= (schema.exclusiveMinimum ?? -Infinity))
  )
    faults.push(`${path} is ${value}`);
  if (kind === 'array' && schema.items)
    faults.push(...value.flatMap((item: any, index: number) => wrong(schema.items, item, `${path}[${index}]`)));
  if (kind !== 'object') return faults;
  for (const name of schema.required ?? []) if (!(name in value)) faults.push(`${path}.${name} is missing`);
  for (const [name, held] of Object.entries(value)) {
    if (schema.properties?.[name]) faults.push(...wrong(schema.properties[name], held, `${path}.${name}`));
    else if (schema.additionalProperties === false) faults.push(`${path}.${name} is not in the schema`);
  }
  return faults;
}
