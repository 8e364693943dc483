/* Explains a build error in one sentence that says what to do, for any thrown value. */

/** The sentence ends with a full stop and contains nothing of the stack. */
export function explainError(error: unknown): string {
  const { code, path, message, hint } = (error ?? {}) as NodeJS.ErrnoException & { hint?: string };
  // The bundler's own message has colours, and its first line states only the number of errors.
  const lines = String(message || hint || (error ?? ''))
    .replace(/\u001b\[[0-9;]*m/g, '')
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  const first = (lines[0]?.startsWith('Build failed') ? (lines[1] ?? lines[0]) : lines[0]) ?? 'something went wrong';
  const where = path ?? /'([^']+)'/.exec(first)?.[1] ?? 'a folder';
  switch (code ?? codeIn(first)) {
    case 'ENOSPC':
    case 'EDQUOT':
      return 'the disk is full. Make room and build again.';
    case 'EFBIG':
      return `${where} is larger than this system allows. Write to another disk.`;
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `${where} may not be read or written by you. Change its permissions, or write another folder.`;
    case 'ENOENT':
      return `${where} was taken away while the site was built. Build again.`;
    // Where a folder is to be created.
    case 'EEXIST':
    case 'ENOTDIR':
      return `${where} is a file, or lies in one, where a folder must be. Write another folder.`;
    case 'ENAMETOOLONG':
      return `${where} is too long a name for this disk. Write a shorter one.`;
    case 'EBUSY':
    case 'EXDEV':
      return `${where} is in use, or a disk of its own. Close what uses it, or write a folder inside it.`;
    case 'EMFILE':
    case 'ENFILE':
      return 'too many files are open on this machine. Close other programs and build again.';
    default:
      return first.replace(/\.?$/, '.');
  }
}

/** Native modules state the reason in the system's words, or with the error code first. */
function codeIn(message: string): string | undefined {
  if (/no space left on device/i.test(message)) return 'ENOSPC';
  if (/permission denied/i.test(message)) return 'EACCES';
  if (/read-only file system/i.test(message)) return 'EROFS';
  return /^(E[A-Z]{3,}): /.exec(message)?.[1];
}
