// Runs a program and exits the same way. A signal to this process alone is forwarded. One typed at the keyboard reaches both processes,
// so the child may receive it twice. When the child dies of a signal, this process dies of the same one, so that the caller sees the
// cause.
import { spawn } from 'node:child_process';

const handedOn = process.platform === 'win32' ? ['SIGTERM'] : ['SIGINT', 'SIGTERM', 'SIGHUP'];

/** @returns {Promise<{ code: number, errors: string }>} errors is empty unless its stderr is a pipe */
export function runChild(file, parts, options) {
  return new Promise((resolve, reject) => {
    const child = spawn(file, parts, options);
    const listeners = handedOn.map((signal) => [signal, () => child.kill(signal)]);
    // Windows sends Ctrl-C to every program of the console. This process must not end before the child.
    if (process.platform === 'win32') listeners.push(['SIGINT', () => {}]);
    for (const [signal, listener] of listeners) process.on(signal, listener);
    let errors = '';
    child.stderr?.setEncoding('utf8').on('data', (text) => (errors += text));
    child.on('error', reject);
    child.on('close', (code, signal) => {
      for (const [name, listener] of listeners) process.off(name, listener);
      if (signal) process.kill(process.pid, signal);
      resolve({ code: code ?? 1, errors });
    });
  });
}
