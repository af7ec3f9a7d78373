// What a test file sees as 'vitest' while doubt runs it: the same words, in this very process, and no report.
// Only what the tests use is here; a file that asks for more fails before anything is changed, and doubt says so.
import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import { restoreAllMocks, spyOn } from '@vitest/spy';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = chai.expect;
/** Ask again for up to a second until the matcher agrees. */
expect.poll = (read) =>
  new Proxy(
    {},
    {
      get:
        (_, matcher) =>
        async (...wanted) => {
          for (let left = 50; ; left -= 1) {
            try {
              return expect(await read())[matcher](...wanted);
            } catch (error) {
              if (left === 0) throw error;
              await new Promise((resolve) => setTimeout(resolve, 20));
            }
          }
        },
    },
  );
let forgetSources = () => undefined;
let modulesReset = false;
/** The runner says how the files of src are evaluated anew. */
export function onResetModules(forget) {
  forgetSources = forget;
}
/** What the globals were before a test stood in for them. */
const globals = new Map();
export const vi = {
  spyOn,
  restoreAllMocks,
  stubGlobal(name, value) {
    if (!globals.has(name)) globals.set(name, globalThis[name]);
    globalThis[name] = value;
  },
  unstubAllGlobals() {
    for (const [name, value] of globals) globalThis[name] = value;
    globals.clear();
  },
  resetModules() {
    modulesReset = true;
    forgetSources();
  },
};

const group = () => ({ steps: [], beforeAll: [], afterAll: [], beforeEach: [], afterEach: [] });
let open = group();

/** `%s` and `$name` of a title are left alone: titles are only shown where something survives. */
const each =
  (add) =>
  (cases) =>
  (title, ...rest) => {
    const body = rest.find((one) => typeof one === 'function');
    for (const one of cases) {
      const given = Array.isArray(one) ? one : [one];
      add(title, () => body(...given));
    }
  };

/** A test may have options between its title and its body, such as more time; they change nothing here. */
export function test(title, ...rest) {
  open.steps.push({ title, body: rest.find((one) => typeof one === 'function') });
}
test.each = each(test);
export const it = test;

export function describe(title, body) {
  const outer = open;
  open = group();
  body();
  outer.steps.push({ title, group: open });
  open = outer;
}
describe.each = each(describe);

export const beforeAll = (hook) => open.beforeAll.push(hook);
export const afterAll = (hook) => open.afterAll.push(hook);
export const beforeEach = (hook) => open.beforeEach.push(hook);
export const afterEach = (hook) => open.afterEach.push(hook);

/** First failure of a group, or undefined when all held. */
async function runGroup({ steps, ...hooks }, around) {
  const inner = {
    beforeEach: [...around.beforeEach, ...hooks.beforeEach],
    afterEach: [...hooks.afterEach, ...around.afterEach],
  };
  try {
    for (const hook of hooks.beforeAll) await hook();
    for (const step of steps) {
      if (step.group) {
        const failure = await runGroup(step.group, inner);
        if (failure) return `${step.title} › ${failure}`;
        continue;
      }
      try {
        for (const hook of inner.beforeEach) await hook();
        await step.body();
      } catch (error) {
        return `${step.title}: ${String(error?.message ?? error).split('\n')[0]}`;
      } finally {
        for (const hook of inner.afterEach) await hook();
      }
    }
  } catch (error) {
    return `around the tests: ${String(error?.message ?? error).split('\n')[0]}`;
  } finally {
    for (const hook of hooks.afterAll) await hook();
  }
  return undefined;
}

/**
 * Load one test file and run what it holds until the first failure.
 * @param load evaluates the file, which fills the open group
 * @returns the failure in one line; undefined when everything held
 */
export async function runFile(load) {
  open = group();
  try {
    await load();
  } catch (error) {
    open = group();
    return `does not load: ${String(error?.message ?? error).split('\n')[0]}`;
  }
  const whole = open;
  open = group();
  const failure = await runGroup(whole, { beforeEach: [], afterEach: [] });
  // What was evaluated under other globals must not stay for the next file.
  if (modulesReset) forgetSources();
  modulesReset = false;
  return failure;
}
