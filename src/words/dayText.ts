const cache = new Map<string, Intl.DateTimeFormat>();

function format(key: string, options: Intl.DateTimeFormatOptions, zone?: string): Intl.DateTimeFormat {
  const full = `${key}@${zone ?? ''}`;
  let found = cache.get(full);
  if (!found) {
    found = new Intl.DateTimeFormat('en-GB', { ...options, ...(zone ? { timeZone: zone } : {}) });
    cache.set(full, found);
  }
  return found;
}

/** @example dayText(Date.UTC(2026, 4, 3, 12), 'UTC') //=> '3 May 2026' */
export function dayText(ms: number, zone?: string): string {
  return format('day', { day: 'numeric', month: 'long', year: 'numeric' }, zone).format(ms);
}

/** @example clockText(Date.UTC(2026, 4, 3, 12), 'UTC') //=> '12:00' */
export function clockText(ms: number, zone?: string): string {
  return format('clock', { hour: '2-digit', minute: '2-digit', hour12: false }, zone).format(ms);
}

/** @example whenText(Date.UTC(2026, 4, 3, 12), 'UTC') //=> '3 May 2026, 12:00' */
export function whenText(ms: number, zone?: string): string {
  return `${dayText(ms, zone)}, ${clockText(ms, zone)}`;
}

const UNITS: [string, number][] = [
  ['d', 86_400_000],
  ['h', 3_600_000],
  ['min', 60_000],
];

/**
 * A span in its two largest units.
 * @example spanText(5_400_000) //=> '1 h 30 min'
 */
export function spanText(ms: number): string {
  let rest = Math.max(0, Math.round(ms / 60_000)) * 60_000;
  const units: string[] = [];
  for (const [name, size] of UNITS) {
    const count = Math.floor(rest / size);
    if (count > 0 && units.length < 2) units.push(`${count} ${name}`);
    rest -= count * size;
  }
  return units.length === 0 ? 'under a minute' : units.join(' ');
}
