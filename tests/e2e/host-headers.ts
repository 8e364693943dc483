/*
 * Parser for the two header files of a build, as hosts parse them: `_headers`, whose rules add up, and the subset of Apache's language in
 * our `.htaccess`. Any other syntax is an error.
 */
export type HeadersFor = (address: string) => Record<string, string>;

const POLICY = 'content-security-policy';

/** Rules of a path, in which `*` matches anything, with indented lines "Name: value". */
export function fromHeadersFile(text: string): HeadersFor {
  const rules = text
    .trim()
    .split(/\n\s*\n/)
    .map((rule) => {
      const [path, ...lines] = rule.split('\n');
      const headers = lines.map((line) => {
        const [, name, value] = /^ +([A-Za-z-]+): (\S.*)$/.exec(line) ?? [];
        if (!name) throw new Error(`_headers: "${line}" is no header`);
        return [name.toLowerCase(), value!] as const;
      });
      if (!path!.startsWith('/') || headers.length === 0) throw new Error(`_headers: "${path}" is no rule`);
      return { fits: new RegExp(`^${path!.split('*').map(literally).join('.*')}$`), headers };
    });
  return (address) => {
    const all: Record<string, string> = {};
    for (const { fits, headers } of rules) {
      if (!fits.test(address)) continue;
      // Hosts of this file join two values of one header with a comma. None may occur twice, except policies, which then both apply.
      for (const [name, value] of headers) {
        if (name in all && name !== POLICY) throw new Error(`_headers: ${address} has ${name} twice`);
        all[name] = name in all ? `${all[name]}, ${value}` : value;
      }
    }
    return all;
  };
}

export function fromApacheFile(text: string): HeadersFor {
  const always: { fits: RegExp | null; name: string; value: string }[] = [];
  const under: { fits: RegExp | null; name: string; value: string }[] = [];
  const types = new Map<string, string>();
  let fits: RegExp | null = null;
  for (const line of text
    .split('\n')
    .map((each) => each.trim())
    .filter(Boolean)) {
    const header = /^Header (always )?set ([A-Za-z-]+) "([^"]*)"$/.exec(line);
    const type = /^AddType "([^"]+)" \.(\w+)$/.exec(line);
    const begins = /^<If "%\{REQUEST_URI\} =~ m#(.+)#">$/.exec(line);
    if (header?.[1]) always.push({ fits, name: header[2]!.toLowerCase(), value: header[3]! });
    else if (header) under.push({ fits, name: header[2]!.toLowerCase(), value: header[3]! });
    else if (type) types.set(type[2]!, type[1]!);
    else if (begins) fits = new RegExp(begins[1]!);
    else if (line === '</If>') fits = null;
    else if (
      !/^(<\/?IfModule( mod_\w+\.c)?>|ErrorDocument 404 \/\S+|DirectoryIndex index\.html|Options -Indexes|AddDefaultCharset utf-8|AddOutputFilterByType DEFLATE .+)$/.test(
        line,
      )
    )
      throw new Error(`.htaccess: "${line}" is not understood`);
  }
  return (address) => {
    const type = types.get(/\.(\w+)$/.exec(address)?.[1] ?? '');
    const set = [...always, ...under]
      .filter(({ fits: only }) => !only || only.test(address))
      .map(({ name, value }) => [name, value] as const);
    return Object.fromEntries([...set, ...(type ? [['content-type', type] as const] : [])]);
  };
}

const literally = (text: string): string => text.replace(/[.+?^${}()|[\]\\]/g, '\\$&');
