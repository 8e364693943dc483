/* Removes Vitest's own environment variables for commands that tests start. A build would use NODE_ENV. */
for (const name of [
  'NODE_ENV',
  'TEST',
  'VITEST',
  'VITEST_MODE',
  'VITEST_POOL_ID',
  'VITEST_WORKER_ID',
  'MODE',
  'DEV',
  'PROD',
  'SSR',
  'BASE_URL',
])
  delete process.env[name];
