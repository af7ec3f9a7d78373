/** Up and down: a step is picked up here. Drawn here and not among the icons, which every start loads. */
export function MoveMark() {
  return (
    <svg
      aria-hidden="true"
      width="26"
      height="26"
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      stroke-width="2"
    >
      <path d="M7 4v16M3.5 8 7 4l3.5 4M17 20V4M13.5 16l3.5 4 3.5-4" />
    </svg>
  );
}
