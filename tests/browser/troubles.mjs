/**
 * What is wrong with the page as it stands, in words; runs inside the page and asks nothing but the layout.
 * @returns {string[]}
 */
export function troubles() {
  const found = [];
  const shown = (element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const named = (element) =>
    `${element.className.toString().split(' ')[0] || element.tagName.toLowerCase()} "${(
      element.getAttribute('aria-label') ??
      element.textContent ??
      ''
    )
      .trim()
      .slice(0, 28)}"`;
  const dialogs = [...document.querySelectorAll('dialog[open]')];
  const top = dialogs.at(-1);
  const scope = top ?? document.body;
  const wide = document.documentElement.scrollWidth - innerWidth;
  if (wide > 0) found.push(`scrolls sideways by ${wide}`);
  for (const box of document.querySelectorAll('.sheet-body'))
    if (box.scrollWidth > box.clientWidth + 1)
      found.push(`sheet scrolls sideways by ${box.scrollWidth - box.clientWidth}`);

  // The figure and the question stand whole above what is pressed; a foot that moves along covers nothing.
  const foot = scope.querySelector('.screen-foot, .sheet-foot');
  const beside =
    foot &&
    getComputedStyle(foot).borderLeftStyle === 'solid' &&
    foot.getBoundingClientRect().top < innerHeight / 3;
  const edge = foot && !beside && shown(foot) ? foot.getBoundingClientRect().top : innerHeight;
  const covers = foot && getComputedStyle(foot).position === 'sticky';
  if (scrollY === 0 && (covers || !foot))
    for (const figure of scope.querySelectorAll('.worktop .big-line, .bench-ask, .keypad-shown')) {
      const { bottom, right } = figure.getBoundingClientRect();
      if (bottom > Math.min(edge, innerHeight) + 1)
        found.push(
          `${named(figure)} ends ${Math.round(bottom - Math.min(edge, innerHeight))} under the foot`,
        );
      if (right > innerWidth + 1) found.push(`${named(figure)} is cut at the right`);
    }

  for (const key of scope.querySelectorAll('.keypad-key')) {
    const { left, top: upper, right, bottom } = key.getBoundingClientRect();
    const corners = [
      [left + 3, upper + 3],
      [right - 3, bottom - 3],
    ];
    if (!corners.every(([x, y]) => document.elementFromPoint(x, y)?.closest('.keypad-key') === key))
      found.push(`key ${key.getAttribute('aria-label')} is cut or covered`);
  }

  // A word that stands on two lines, unless it has a hyphen of its own to break at.
  const words = document.createTreeWalker(scope, NodeFilter.SHOW_TEXT);
  for (let node = words.nextNode(); node; node = words.nextNode()) {
    const holder = node.parentElement;
    if (!holder || !shown(holder) || holder.closest('.unseen, textarea, script, style, noscript, .late'))
      continue;
    for (const { 0: word, index } of (node.textContent ?? '').matchAll(/(?<!\u00ad)[\p{L}\p{N}]{3,}/gu)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const lines = [...range.getClientRects()].filter(({ width }) => width > 0.5);
      const [first] = lines;
      if (first && lines.some(({ top: y }) => Math.abs(y - first.top) > first.height / 2))
        found.push(`"${word}" is broken`);
    }
  }

  const targets = [
    ...scope.querySelectorAll(
      'a[href], button, summary, label:has(input), input:not(label input), select, textarea',
    ),
  ].filter((target) => shown(target) && (top || !target.closest('dialog')) && !target.closest('.unseen'));
  const regionOf = (target) =>
    target.closest('.screen-head, .screen-foot, .sheet-head, .sheet-foot, .remarks, .full') ?? scope;
  const boxes = targets.map((target) => ({
    target,
    region: regionOf(target),
    box: target.getBoundingClientRect(),
  }));
  boxes.forEach(({ target, region, box }, at) => {
    for (const other of boxes.slice(at + 1)) {
      if (other.region !== region || target.contains(other.target) || other.target.contains(target)) continue;
      const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
      const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
      if (across > 1.5 && down > 1.5) found.push(`${named(target)} overlaps ${named(other.target)}`);
    }
  });

  const least = innerWidth < 360 ? [64, 56] : [96, 72];
  for (const target of scope.querySelectorAll('.acts button, .acts a, .keypad-key, .tile')) {
    if (!shown(target)) continue;
    const { width, height } = target.getBoundingClientRect();
    const [wideLeast = 0, highLeast = 0] = target.matches('.acts-more > *') ? [64, least[1]] : least;
    if (width < wideLeast - 0.5 || height < highLeast - 0.5)
      found.push(`${named(target)} is ${Math.round(width)} × ${Math.round(height)}`);
  }
  return [...new Set(found)];
}

/**
 * Takes the focus through the page and says what had it out of sight: under the head, the foot or beyond the edge.
 * @returns {string[]}
 */
export function hiddenFocus() {
  const scope = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body;
  const found = [];
  const all = [...scope.querySelectorAll('a[href], button:not(:disabled), summary, input, select, textarea')];
  for (const target of all.filter((one) => one.checkVisibility()).slice(0, 80)) {
    target.focus();
    const { left, top, width, height } = target.getBoundingClientRect();
    const at = document.elementFromPoint(left + width / 2, top + height / 2);
    if (!at || !(target.contains(at) || at.contains(target) || target.closest('label')?.contains(at)))
      found.push(
        `focus on "${(target.textContent || target.getAttribute('aria-label') || '').trim().slice(0, 28)}" is hidden`,
      );
  }
  scrollTo(0, 0);
  return found;
}
