/* Names of files and folders: what a host can serve, what a collection expects, and nothing twice. */
import { collections } from '../schemas/collections.ts';
import type { Fault } from '../reader/fault.ts';
import type { Folder } from '../reader/folder.ts';
import { nearest } from './nearest.ts';

const PLAIN = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const PICTURE = /\.(?:jpe?g|png|webp|avif|svg)$/i;

export function nameFaults(folder: Folder): Fault[] {
  if (folder.files.length === 0 && folder.faults.length > 0) return [];
  return [...clubFaults(folder), ...folder.files.flatMap(fileFaults), ...twins(folder.files)];
}

const fault = (path: string, rule: string, field: string, found: string, write: string): Fault => ({ path, line: 1, column: 1, rule, field, found, write });

function clubFaults(folder: Folder): Fault[] {
  if (folder.files.includes('club.yaml')) return [];
  const what = folder.files.length === 0 ? 'an empty folder' : 'no club.yaml';
  return [fault('club.yaml', 'missing-file', 'the content folder', what, 'a file club.yaml with the club\'s name, place, districts and contacts')];
}

function fileFaults(path: string): Fault[] {
  const parts = path.split('/');
  if (path === 'club.yaml' || path === 'README.md') return [];
  if (parts.length === 1) return [fault(path, 'file-place', 'the file', 'a file outside every folder', `it in one of the folders ${Object.keys(collections).join(', ')}`)];
  const kind = (collections as Record<string, { ending: string }>)[parts[0]!];
  if (!kind) {
    const near = nearest(parts[0]!, Object.keys(collections));
    return [fault(path, 'folder-name', 'the folder', `"${parts[0]}", a folder the almanac does not know`, near ? `"${near}"` : `one of: ${Object.keys(collections).join(', ')}`)];
  }
  if (PICTURE.test(path)) return [];
  if (parts.length > 2) return [fault(path, 'file-place', 'the file', 'a page in a folder below the collection', `it straight in ${parts[0]}/`)];
  const dot = parts[1]!.lastIndexOf('.');
  const [name, ending] = [parts[1]!.slice(0, dot), parts[1]!.slice(dot)];
  if (ending !== kind.ending) return [fault(path, 'file-ending', 'the file\'s name', `the ending "${ending}"`, `"${kind.ending}", as all files in ${parts[0]}/ have`)];
  if (!PLAIN.test(name)) return [fault(path, 'file-name', 'the file\'s name', `"${name}", which hosts and addresses cannot carry safely`, `"${plainName(name)}${ending}"`)];
  return [];
}

function twins(files: string[]): Fault[] {
  const seen = new Map<string, string>();
  return files.flatMap((path) => {
    const key = path.toLowerCase().normalize('NFC').replace(/[ _]+/g, '-');
    const other = seen.get(key);
    seen.set(key, path);
    return other ? [fault(path, 'same-name', 'the file\'s name', `a name that differs from "${other}" only in letter case, spaces or signs`, 'a name of its own')] : [];
  });
}

const plainName = (name: string): string =>
  name.normalize('NFD').replace(/[\u0300-\u036f]/g, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'a-name';
