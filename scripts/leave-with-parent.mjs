// Ends a process when its parent has died. It is preloaded into everything that the launcher starts, and into the launcher under npm. A
// parent that was killed cannot forward the signal. The child then sees a new parent id and ends as if it had received SIGTERM. Windows
// keeps the old parent id, and ends the programs of a closed console by itself.
const parent = process.ppid;
const look = () => {
  if (process.ppid !== parent) process.kill(process.pid, 'SIGTERM');
};
setInterval(look, 500).unref();
