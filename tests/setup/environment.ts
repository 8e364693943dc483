/* Vitest writes variables of its own into the environment. Commands that tests start must not see them: a build would take NODE_ENV for its own. */
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
