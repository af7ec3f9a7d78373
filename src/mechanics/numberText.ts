const formats = new Map<string, Intl.NumberFormat>();

function formatOf(most: number, grouped: boolean, least = 0): Intl.NumberFormat {
  const key = `${least}-${most}${grouped}`;
  const known = formats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(undefined, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    useGrouping: grouped,
    numberingSystem: 'latn',
  });
  formats.set(key, made);
  return made;
}

/**
 * A number for a person: the decimal sign of the phone, Latin digits, thousands set apart. Every number of a sentence or a
 * figure goes through here or `bareNumber`, so that a page has one decimal sign.
 * @param value any finite number
 * @param most decimals at most, 0 to 20
 * @example numberText(8.25) //=> '8.3'
 */
export const numberText = (value: number, most = 1): string => formatOf(most, true).format(value);

/**
 * The same without a mark between thousands, as lengths and names of things are written.
 * @param value any finite number
 * @param most decimals at most, 0 to 20
 * @param least decimals at least, 0 to `most`
 * @example bareNumber(1234.5) //=> '1234.5'
 */
export const bareNumber = (value: number, most = 2, least = 0): string =>
  formatOf(most, false, least).format(value);
