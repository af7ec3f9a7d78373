import { describe, expect, test } from 'vitest';
import { type CalculatorDraft, firstFilled, readFilled } from '../../../src/drafts/calculatorDraft.ts';
import { reckonings } from '../../../src/workings/reckonings/reckonings.ts';

const asksOf = (id: string) => reckonings.find((each) => each.id === id)?.asks ?? [];
const wrench = asksOf('wrench-extension');
const filled = (texts: Record<string, string>, units: CalculatorDraft['units'] = {}): CalculatorDraft => {
  const first = firstFilled(wrench, []);
  return { texts: { ...first.texts, ...texts }, units: { ...first.units, ...units } };
};
const whole = { torque: '5', lever: '210', extension: '30', angle: '90' };

describe('the form of a working', () => {
  test('begins with the units of the settings, but a figure that stands there keeps its own', () => {
    const { units } = firstFilled(wrench, ['[in_i].[lbf_av]', '[in_i]']);
    expect(units).toMatchObject({ torque: '[in_i].[lbf_av]', lever: '[in_i]' });
    const cure = firstFilled(asksOf('cure-time'), ['[in_i]', '[degF]']);
    expect(cure).toMatchObject({ texts: { gap: '0.05' }, units: { gap: 'mm', temperature: 'Cel' } });
  });

  test('takes a decimal comma, and brings every unit to the one it counts in', () => {
    expect(readFilled(wrench, filled({ ...whole, torque: '5,2' }))).toMatchObject({
      figures: { torque: 5.2, lever: 210, extension: 30, angle: 90 },
    });
    const inches = readFilled(wrench, filled({ ...whole, lever: '10' }, { lever: '[in_i]' }));
    // Exact: an inch is 25.4 mm.
    expect(inches).toMatchObject({ figures: { lever: 254 } });
    expect(readFilled(wrench, filled({ ...whole, lever: '10 in' }))).toMatchObject({
      figures: { lever: 254 },
    });
  });

  test.each([
    ['nothing', { torque: '' }, /number/],
    ['words', { torque: 'five' }, /digits/],
    ['two separators', { torque: '1.234,5' }, /One comma/],
    ['a torque of no bicycle', { torque: '4000' }, /Between 0.1 and 400 N·m/],
    ['a length in newton metres', { lever: '210 Nm' }, /Wrong unit here/],
    ['less than nothing', { lever: '-5' }, /Enter 0 or more/],
  ])('says what is wrong with %s, at the field', (_name, texts, words) => {
    const read = readFilled(wrench, filled({ ...whole, ...texts }));
    expect(read.ok ? '' : Object.values(read.wrong).join()).toMatch(words);
    expect(read.ok ? [] : Object.keys(read.wrong)).toEqual(Object.keys(texts));
  });

  test('takes a minus where a figure has two directions only', () => {
    const rider = asksOf('rider-moment');
    const first = firstFilled(rider, []);
    const texts = { ...first.texts, rise: '-40,5', forward: '−400' };
    expect(readFilled(rider, { ...first, texts })).toMatchObject({ figures: { rise: -40.5, forward: -400 } });
  });

  test('asks for whole numbers where things are counted', () => {
    const spokes = asksOf('spoke-length');
    const first = firstFilled(spokes, []);
    const read = readFilled(spokes, { ...first, texts: { ...first.texts, holes: '16,5' } });
    expect(read).toMatchObject({ ok: false, wrong: { holes: 'Type a whole number.' } });
  });

  test('reads a frost in either unit of temperature', () => {
    const cure = asksOf('cure-time');
    const first = firstFilled(cure, []);
    const cold = (temperature: string, unit: 'Cel' | '[degF]') =>
      readFilled(cure, {
        texts: { ...first.texts, temperature },
        units: { ...first.units, temperature: unit },
      });
    expect(cold('-5', 'Cel')).toMatchObject({ figures: { temperature: -5 } });
    // Exact: 23 °F is 5 °C below freezing.
    const fahrenheit = cold('23', '[degF]');
    expect(fahrenheit.ok && fahrenheit.figures['temperature']).toBeCloseTo(-5, 9);
  });
});
