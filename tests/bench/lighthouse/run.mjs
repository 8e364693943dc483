// One browser, many pages: `node run.mjs JSON` with { urls, rounds, browser, flags } prints a line of JSON for each view. It is a
// separate program, because its packages are not the project's.
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';

const { urls, rounds, browser, flags } = JSON.parse(process.argv[2]);
const chrome = await launch({ chromePath: browser ?? undefined, chromeFlags: ['--headless=new', ...flags] });
try {
  for (const url of urls) {
    for (let round = 0; round < rounds; round += 1) console.log(JSON.stringify(await view(url)));
  }
} finally {
  await chrome.kill();
}

async function view(url) {
  const { lhr } = await lighthouse(url, { port: chrome.port, output: 'json', logLevel: 'error' });
  if (lhr.runtimeError) throw new Error(`${url}: ${lhr.runtimeError.message}`);
  const value = (id) => lhr.audits[id].numericValue;
  return {
    url,
    scores: Object.fromEntries(Object.values(lhr.categories).map(({ id, score }) => [id, Math.round(score * 100)])),
    largestPaint: value('largest-contentful-paint'),
    blocked: value('total-blocking-time'),
    shift: value('cumulative-layout-shift'),
    missed: Object.values(lhr.categories).flatMap(({ id, auditRefs }) =>
      auditRefs
        .filter(
          ({ id: audit, weight }) =>
            weight > 0 && lhr.audits[audit].score !== null && lhr.audits[audit].score < (id === 'performance' ? 0.9 : 1),
        )
        .map(({ id: audit }) => audit),
    ),
  };
}
