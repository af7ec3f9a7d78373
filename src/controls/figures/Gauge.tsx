import './Gauge.css';
import { Icon } from '../Icon.tsx';

export interface GaugeProps {
  /** What is read: "Pressure, rear". */
  label: string;
  /** The reading; undefined while there is none. */
  value: number | undefined;
  /** The reading as written, with its unit. */
  text: string;
  band: { lo: number; hi: number };
  /** Ends of the rule; they widen the band by half at either side when left out. */
  scale?: { lo: number; hi: number };
  /** The band as written: "2.5 to 3.5 bar". */
  bandText: string;
  /** Off where the figure is the likeliest of the band itself, so that it cannot lie outside. */
  judged?: boolean;
}

const gaugeWords = {
  none: { icon: 'ring', word: 'Not measured' },
  low: { icon: 'down', word: 'Below the band' },
  in: { icon: 'check', word: 'In the band' },
  high: { icon: 'up', word: 'Above the band' },
} as const;

/** A reading against the band it should lie in. */
export function Gauge({ label, value, text, band, scale, bandText, judged = true }: GaugeProps) {
  const half = (band.hi - band.lo) / 2 || Math.abs(band.hi) / 2 || 1;
  const { lo, hi } = scale ?? { lo: band.lo - half, hi: band.hi + half };
  const share = (one: number) => `${Math.min(100, Math.max(0, ((one - lo) / (hi - lo)) * 100))}%`;
  const where = value === undefined ? 'none' : value < band.lo ? 'low' : value > band.hi ? 'high' : 'in';
  const shown = gaugeWords[where];
  return (
    <div class={where === 'low' || where === 'high' ? 'gauge-out' : undefined}>
      <div class="gauge-head">
        <span class="caption">{label}</span>
        <span class={`gauge-word gauge-${where}`}>
          {judged && <Icon name={shown.icon} sizePx={20} />}
          {judged ? (text ? `${text}: ${shown.word.toLowerCase()}` : shown.word) : text}
        </span>
      </div>
      <div class="gauge-rule" aria-hidden="true">
        <span class="gauge-band" style={{ '--from': share(band.lo), '--to': share(band.hi) }} />
        {value !== undefined && <span class="gauge-at" style={{ '--at': share(value) }} />}
      </div>
      <p class="small">Band {bandText}</p>
    </div>
  );
}
