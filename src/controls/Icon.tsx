/** Drawings on a 24 by 24 grid, one stroke width, square ends: as if scribed on plate. */
export const drawings = {
  spanner:
    'M12.3 10.9 21.5 20l-2 2-9.2-9.2M8 2.5a5.5 5.5 0 1 0 0 11 5.5 5.5 0 0 0 0-11zM8 5.2l2.4 1.4v2.8L8 10.8 5.6 9.4V6.6z',
  bolt: 'M5 2.5h14v5.5H5zM10 2.5V8M14 2.5V8M8.5 8v11.5L12 22l3.5-2.5V8M8.5 11l7 2M8.5 15l7 2',
  handTight:
    'M7 12V6a1.5 1.5 0 0 1 3 0v5M10 10V4a1.5 1.5 0 0 1 3 0v6M13 10V5a1.5 1.5 0 0 1 3 0v7M16 9.5a1.5 1.5 0 0 1 3 0V15c0 4-2.5 6.5-6 6.5-3.2 0-4.6-1.6-6-4.5L4.5 13c-.6-1.4 1.3-2.3 2.2-1.2L7 12.5',
  press: 'M5 21h14M5 3h14M6.5 3v18M17.5 3v18M12 3v6M9 9h6v3H9zM9.5 16h5v5h-5z',
  drop: 'M12 3c3.5 4.5 5.5 7.3 5.5 10.5a5.5 5.5 0 0 1-11 0C6.5 10.3 8.5 7.5 12 3zM9.5 14a2.5 2.5 0 0 0 2.5 2.5',
  tyre: 'M12 2.5a9.5 9.5 0 1 0 0 19 9.5 9.5 0 0 0 0-19zM12 6.5a5.5 5.5 0 1 0 0 11 5.5 5.5 0 0 0 0-11zM12 2.5v4M12 17.5v4M2.5 12h4M17.5 12h4',
  wheel:
    'M12 2.5a9.5 9.5 0 1 0 0 19 9.5 9.5 0 0 0 0-19zM12 10a2 2 0 1 0 0 4 2 2 0 0 0 0-4zM12 2.5V10M12 14v7.5M2.5 12H10M14 12h7.5',
  caliper: 'M3 4h18M3 4v14l3-4V9h3v5h0M3 9h3M14 4v5h3v9l-3-4V9M9 9h5M8 4v2M11 4v2M17 4v2',
  saw: 'M3 6h15l3 3v4h-3M3 6v6l1.5 2 1.5-2 1.5 2L9 12l1.5 2 1.5-2 1.5 2 1.5-2 1.5 2 1.5-2V6',
  file: 'M2 12h5M7 9h12l3 3-3 3H7zM10 9l2 6M13 9l2 6M16 9l2 6',
  drill: 'M3 5h10v6H3zM5 11l-1 8h4l1-8M13 6.5h3v3h-3M16 8h6M8 5V3',
  brake: 'M11 3a9 9 0 1 0 0 18M11 8a4 4 0 1 0 0 8M14 4h5l2 4v8l-2 4h-5zM17 9v6',
  chain:
    'M7 8.5a3.5 3.5 0 1 0 0 7h3.5a3.5 3.5 0 0 0 0-7zM13.5 15.5H17a3.5 3.5 0 1 0 0-7h-3.5M7 12h0M17 12h0M10.5 12h3',
  part: 'M12 2.5 20.5 7v10L12 21.5 3.5 17V7zM3.5 7 12 11.5 20.5 7M12 11.5v10',
  bike: 'M5.5 12.5a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM18.5 12.5a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM5.5 16.5 9 8h6.5l3 8.5M9 8l3.5 8.5H5.5M12.5 16.5 16 9.5M7.5 6H10M14 5h3',
  shelf: 'M4 3v18M20 3v18M4 9h16M4 18h16M7 9V5h4v4M13 18v-5h5v5M7 18v-3h3v3',
  scale: 'M12 3v17M7 20.5h10M5 6.5h14M5 6.5 2 13.5h6zM19 6.5l-3 7h6z',
  ruler: 'M2 8h20v8H2zM6 8v4M10 8v3M14 8v4M18 8v3',
  check: 'M4 12.5 9.5 18 20 6',
  cross: 'M5 5l14 14M19 5 5 19',
  ring: 'M12 4a8 8 0 1 0 0 16 8 8 0 0 0 0-16z',
  hourglass: 'M6 2.5h12M6 21.5h12M7.5 2.5v4L12 12l4.5-5.5v-4M7.5 21.5v-4L12 12l4.5 5.5v4M9.5 20h5',
  clock: 'M12 3a9 9 0 1 0 0 18 9 9 0 0 0 0-18zM12 7v5.5l3.5 2',
  bell: 'M5 17h14l-2-3v-4a5 5 0 0 0-10 0v4zM12 5V3M10 20.5h4',
  warning: 'M12 3 22 20.5H2zM12 9.5v5M12 17v1',
  stop: 'M8 2.5h8l5.5 5.5v8L16 21.5H8L2.5 16V8zM12 7v6M12 16v1',
  note: 'M5 3h14v12l-5 6H5zM14 21v-6h5M8 8h8M8 12h5',
  camera: 'M3 7h4.5L9 4.5h6L16.5 7H21v13H3zM12 9.5a3.75 3.75 0 1 0 0 7.5 3.75 3.75 0 0 0 0-7.5z',
  pencil: 'M4 20l1-5L16.5 3.5l4 4L9 19zM14 6l4 4',
  undo: 'M8 4 3.5 8.5 8 13M3.5 8.5H14a6 6 0 0 1 0 12H7',
  back: 'M10 5l-7 7 7 7M3 12h18',
  next: 'M14 5l7 7-7 7M21 12H3',
  up: 'M5 10l7-7 7 7M12 3v18',
  down: 'M5 14l7 7 7-7M12 21V3',
  more: 'M9 5l7 7-7 7',
  plus: 'M12 4v16M4 12h16',
  minus: 'M4 12h16',
  erase: 'M8.5 5H21v14H8.5L2.5 12zM12 9.5l5 5M17 9.5l-5 5',
  printer: 'M7 9V3h10v6M7 17H3V9h18v8h-4M7 14h10v7H7z',
  save: 'M12 3v12M7 10.5l5 5 5-5M3 16v5h18v-5',
  open: 'M12 16V4M7 8.5l5-5 5 5M3 16v5h18v-5',
  share: 'M12 15V3M8 6.5 12 3l4 3.5M6 10H4v11h16V10h-2',
  calendar: 'M3 5h18v16H3zM3 10h18M8 2.5V7M16 2.5V7M8 14h3',
  lookup: 'M10.5 3a7.5 7.5 0 1 0 0 15 7.5 7.5 0 0 0 0-15zM16 16l5.5 5.5',
  lock: 'M5 11h14v10H5zM8 11V7.5a4 4 0 0 1 8 0V11M12 15v2.5',
  sun: 'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM12 2v3M12 19v3M2 12h3M19 12h3M5 5l2 2M17 17l2 2M19 5l-2 2M7 17l-2 2',
  moon: 'M20 14.5A8.5 8.5 0 1 1 9.5 4a7 7 0 0 0 10.5 10.5z',
  phone: 'M7 2.5h10v19H7zM11 18.5h2',
  sound: 'M4 9.5h4L13 5v14l-5-4.5H4zM16.5 9a4 4 0 0 1 0 6M19 6.5a8 8 0 0 1 0 11',
  microphone: 'M9 3h6v10H9zM5.5 11c0 4 2.5 6 6.5 6s6.5-2 6.5-6M12 17v4.5M8.5 21.5h7',
  settings: 'M4 7h9M17 7h3M4 17h3M11 17h9M13 4.5h4v5h-4zM7 14.5h4v5H7z',
  question: 'M8 8.5a4 4 0 1 1 5.5 3.7c-1 .5-1.5 1.2-1.5 2.3v.5M12 18.5v1',
  flag: 'M5 21.5V3h14l-3.5 5 3.5 5H5',
  shim: 'M12 2.5a9.5 9.5 0 1 0 9.5 9.5M12 6.5A5.5 5.5 0 1 0 17.5 12M17.5 12h4M12 2.5v4',
  tally: 'M5 4v16M10 4v16M15 4v16M20 4v16M2 17 23 7',
} as const;

export type IconName = keyof typeof drawings;

export interface IconProps {
  name: IconName;
  /** CSS px of the square; 24 if left out. */
  sizePx?: number;
  /** Spoken name; leave out where a word stands beside the drawing (it should). */
  label?: string;
}

/** A workshop drawing in the colour of the text around it. */
export function Icon({ name, sizePx = 24, label }: IconProps) {
  const spoken = label
    ? ({ role: 'img', 'aria-label': label } as const)
    : ({ 'aria-hidden': 'true' } as const);
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: named by aria-label where no word stands beside it, else hidden
    <svg
      {...spoken}
      width={sizePx}
      height={sizePx}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      stroke-width="2"
      stroke-linejoin="round"
      stroke-linecap="square"
      style={{ flex: 'none' }}
    >
      <path d={drawings[name]} />
    </svg>
  );
}
