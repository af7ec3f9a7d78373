/** A history is written down in a handful of zones; more of them than this were not lived in. */
const MOST_ZONES = 200;

/** Tells which time zones this browser can print days in; each is tried once. */
export function zonesTried(): (zone: string) => boolean {
  const tried = new Map<string, boolean>();
  return (zone) => {
    const known = tried.get(zone);
    if (known !== undefined) return known;
    const can = tried.size < MOST_ZONES && canPrint(zone);
    tried.set(zone, can);
    return can;
  };
}

function canPrint(timeZone: string): boolean {
  try {
    new Intl.DateTimeFormat('en-GB', { timeZone });
    return true;
  } catch {
    return false;
  }
}
