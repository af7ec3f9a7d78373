import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { eachOnItsOwnPhone, phone, served } from './ownPhone.ts';
import { firstVisit, type Served, serveDist } from './product.ts';

eachOnItsOwnPhone();

/** What the shipped header file for static hosts says, as that host would read it. */
function shippedHeaders(): Record<string, string> {
  const lines = readFileSync('dist/_headers', 'utf8').split('\n').slice(1);
  return Object.fromEntries(
    lines
      .filter((line) => line !== '')
      .map((line) => /^ {2}([\w-]+): (.*)$/.exec(line)?.slice(1) as [string, string]),
  );
}

/** What hostile text could try in a page, and how each of them ended. */
const attempts = (elsewhere: string) =>
  phone.page.evaluate(async (origin) => {
    const seen = globalThis as unknown as { ran?: boolean };
    // What the tester runs at once may do what the page may not.
    await new Promise((later) => setTimeout(later, 10));
    const tried = async (work: () => unknown) => {
      try {
        await work();
        return 'done';
      } catch (thrown) {
        return (thrown as Error).name;
      }
    };
    const script = document.createElement('script');
    const inline = document.createElement('script');
    const sheet = document.createElement('style');
    sheet.textContent = 'body { outline: 7px solid red }';
    const frame = document.createElement('iframe');
    const base = document.createElement('base');
    base.href = 'https://example.invalid/';
    document.head.append(sheet, base);
    const text = 'globalThis.ran = true';
    return {
      function: await tried(() => new Function(text)()),
      timer: await tried(() => setTimeout(text as unknown as () => void)),
      inline: await tried(() => {
        inline.text = text;
        document.head.append(inline);
      }),
      'script of a string': await tried(() => {
        script.src = '/sw.js';
      }),
      'markup from data': await tried(() => {
        document.body.innerHTML = '<img src=x onerror="globalThis.ran = true">';
      }),
      'a page in a frame': await tried(() => {
        frame.srcdoc = '<script>1</script>';
      }),
      'a policy of its own': await tried(() =>
        (
          globalThis as unknown as { trustedTypes: { createPolicy(name: string, rules: object): unknown } }
        ).trustedTypes.createPolicy('any', {}),
      ),
      'a request elsewhere': await tried(() => fetch(origin, { mode: 'no-cors' })),
      ran: seen.ran,
      outline: getComputedStyle(document.body).outlineWidth,
      base: document.baseURI.startsWith(location.origin),
    };
  }, elsewhere);

const INERT = {
  function: 'EvalError',
  timer: 'TypeError',
  inline: 'TypeError',
  'script of a string': 'TypeError',
  'markup from data': 'TypeError',
  'a page in a frame': 'TypeError',
  'a policy of its own': 'TypeError',
  'a request elsewhere': 'TypeError',
  ran: undefined,
  base: true,
};

describe('the content policy', () => {
  let elsewhere: Served;
  beforeAll(async () => {
    elsewhere = await serveDist();
  });
  afterAll(() => elsewhere.stop());

  test.each([
    ['from a server that sets no headers', {}],
    ['from a server that sets the shipped ones', shippedHeaders],
  ])('%s lets no text become a script, a page or a request', async (_where, headers) => {
    served.add(typeof headers === 'function' ? headers() : headers);
    await firstVisit(phone, served.origin);
    for (const _by of ['the server', 'the worker']) {
      const { outline, ...rest } = await attempts(`${elsewhere.origin}/manifest.webmanifest`);
      expect(rest).toEqual(INERT);
      expect(outline).not.toBe('7px');
      phone.refusals.length = 0;
      await phone.page.reload();
      await phone.page.getByRole('heading', { level: 1 }).waitFor();
    }
    expect(elsewhere.hits).toEqual([]);
    phone.strays.length = 0;
  });

  test('names no source but the own origin, and no unsafe word', () => {
    const [, policy = ''] =
      /Content-Security-Policy" content="([^"]*)"/.exec(readFileSync('dist/index.html', 'utf8')) ?? [];
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/style-src 'self' 'sha256-[\w+/]+='/);
    expect(shippedHeaders()['Content-Security-Policy']).not.toMatch(/unsafe|https?:|\*/);
  });
});

describe('a page of another origin', () => {
  let framing: Server;
  let origin = '';
  beforeAll(async () => {
    framing = createServer((_request, response) => {
      response.writeHead(200, { 'content-type': 'text/html' });
      response.end(`<iframe src="${served.origin}/"></iframe>`);
    });
    await new Promise<void>((ready) => framing.listen(0, '127.0.0.1', ready));
    origin = `http://127.0.0.1:${(framing.address() as { port: number }).port}`;
  });
  afterAll(() => framing.close());

  const framed = async () => {
    await phone.page.goto(origin);
    await phone.page.waitForTimeout(1500);
    const app = phone.page.frames().find((frame) => frame !== phone.page.mainFrame());
    const shown =
      (await app
        ?.locator('#app')
        .count()
        .catch(() => 0)) ?? 0;
    phone.strays.length = 0;
    phone.refusals.length = 0;
    return shown;
  };

  test('cannot frame the app where the server sends the shipped headers', async () => {
    served.add(shippedHeaders());
    expect(await framed()).toBe(0);
  });

  test('cannot frame it either once the worker answers, whatever the server sends', async () => {
    await firstVisit(phone, served.origin);
    expect(await framed()).toBe(0);
  });
});

test('the worker says of every file what the shipped headers say', async () => {
  await firstVisit(phone, served.origin);
  const { 'Cache-Control': _own, ...wanted } = shippedHeaders();
  for (const path of ['/', '/rescue.html', '/manifest.webmanifest', '/icons/icon-32.png']) {
    const found = await phone.page.evaluate(
      async (at) => Object.fromEntries((await fetch(at)).headers),
      path,
    );
    for (const [name, value] of Object.entries(wanted))
      expect(found[name.toLowerCase()], `${path} ${name}`).toBe(value);
  }
});

test('[N1] a request to elsewhere is noticed, of a page and of the worker', async () => {
  const elsewhere = await serveDist();
  await firstVisit(phone, served.origin);
  const [worker] = phone.context.serviceWorkers();
  await worker?.evaluate(
    (to) => fetch(to, { mode: 'no-cors' }).then(() => {}),
    `${elsewhere.origin}/by-worker`,
  );
  await phone.page.goto(`${elsewhere.origin}/by-page`).catch(() => {});
  expect(phone.strays.map((address) => new URL(address).pathname).sort()).toEqual(['/by-page', '/by-worker']);
  phone.strays.length = 0;
  await elsewhere.stop();
});
