// Loaded first into whatever the launcher starts, and into the launcher under npm. A parent that is
// killed outright cannot hand the signal on; its child then sees that it has a new parent, and ends as
// if it had been asked to.
// (Windows keeps the old number, and ends the programs of a closed console by itself.)
const parent = process.ppid;
const look = () => {
  if (process.ppid !== parent) process.kill(process.pid, 'SIGTERM');
};
setInterval(look, 500).unref();
