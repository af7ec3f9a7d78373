/** What the modules of a script offer each other, by name. */
export type Offered = Record<string, unknown>;

type Declare = (
  offer: (names: string | Offered, value?: unknown) => unknown,
  context: { import(address: string): Promise<Offered> },
) => { setters: (((from: Offered) => void) | undefined)[]; execute(): void };

/** A script in the System.register format: the addresses of what it needs, and how it is made when that is there. */
export type Registered = readonly [needs: readonly string[], declare: Declare];

interface Script {
  offered: Offered;
  /** To be told of whatever the script offers, now and later. */
  setters: ((from: Offered) => void)[];
  /** What it needs, once the script itself has been fetched. */
  needs: Promise<Script[]>;
  /** The same, once it is known. */
  before: Script[];
  execute(): void;
  ran: boolean;
}

export interface Linker {
  /** Runs a script and all it needs, each once and what is needed first. One that failed is fetched anew next time. */
  run(url: string): Promise<Offered>;
  /** Takes a script that is there already, as if it had been fetched. */
  take(url: string, registered: Registered): void;
}

/**
 * Puts scripts in the System.register format together, as a browser does with modules. A script that waits at its
 * top level is not made: the build refuses it.
 * @param fetched runs the script at an address and gives what it registered; rejects when it cannot be had
 * @see the format: https://github.com/systemjs/systemjs/blob/main/docs/system-register.md
 */
export function linker(fetched: (url: string) => Promise<Registered>): Linker {
  const scripts = new Map<string, Script>();

  function begin(url: string, registered: Promise<Registered>): Script {
    const script: Script = {
      offered: {},
      setters: [],
      needs: registered.then((given) => declare(url, script, given)),
      before: [],
      execute() {},
      ran: false,
    };
    scripts.set(url, script);
    return script;
  }

  const scriptAt = (url: string) => scripts.get(url) ?? begin(url, fetched(url));
  const absolute = (address: string, from: string) => new URL(address, from).href;

  function declare(url: string, script: Script, [needs, declared]: Registered): Script[] {
    const offer = (names: string | Offered, value?: unknown) => {
      Object.assign(script.offered, typeof names === 'string' ? { [names]: value } : names);
      for (const set of script.setters) set(script.offered);
      return typeof names === 'string' ? value : names;
    };
    const made = declared(offer, { import: (address) => run(absolute(address, url)) });
    script.execute = made.execute;
    script.before = needs.map((address, at) => {
      const needed = scriptAt(absolute(address, url));
      const set = made.setters[at];
      if (set) {
        set(needed.offered);
        needed.setters.push(set);
      }
      return needed;
    });
    return script.before;
  }

  async function fetchAll(script: Script, asked: Set<Script>): Promise<void> {
    if (script.ran || asked.has(script)) return;
    asked.add(script);
    const needs = await script.needs;
    await Promise.all(needs.map((needed) => fetchAll(needed, asked)));
  }

  function execute(script: Script): Offered {
    if (script.ran) return script.offered;
    // Noted first: scripts may need each other.
    script.ran = true;
    try {
      script.before.forEach(execute);
      script.execute();
    } catch (thrown) {
      script.ran = false;
      throw thrown;
    }
    return script.offered;
  }

  async function run(url: string): Promise<Offered> {
    const asked = new Set<Script>();
    try {
      const script = scriptAt(url);
      await fetchAll(script, asked);
      return execute(script);
    } catch (thrown) {
      for (const [at, script] of scripts) if (asked.has(script) && !script.ran) scripts.delete(at);
      throw thrown;
    }
  }

  return {
    run,
    take: (url, registered) => void begin(url, Promise.resolve(registered)),
  };
}
