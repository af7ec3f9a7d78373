import { Icon } from '../../controls/Icon.tsx';
import type { SheetLine } from '../../documents/sheetLine.ts';

type FieldLine = Extract<SheetLine, { is: 'field' }>;

interface Block {
  heading: string | undefined;
  fields: FieldLine[];
}

interface Section {
  title: string | undefined;
  caution: string | undefined;
  blocks: Block[];
}

/** Lines gathered into sections and blocks, as paper wants them: a block is not broken over two pages. */
export function sectionsOf(lines: readonly SheetLine[]): Section[] {
  const sections: Section[] = [{ title: undefined, caution: undefined, blocks: [] }];
  for (const line of lines) {
    const section = sections.at(-1);
    if (line.is === 'section') sections.push({ title: line.text, caution: undefined, blocks: [] });
    else if (line.is === 'caution' && section) section.caution = line.text;
    else if (line.is === 'heading') section?.blocks.push({ heading: line.text, fields: [] });
    else if (line.is === 'field') {
      if (section?.blocks.length === 0) section.blocks.push({ heading: undefined, fields: [] });
      section?.blocks.at(-1)?.fields.push(line);
    }
  }
  return sections;
}

/** Lines of one label in a row stand under it once: a list of open items is read, not its label. */
export function underOneLabel(fields: readonly FieldLine[]): FieldLine[][] {
  const rows: FieldLine[][] = [];
  for (const line of fields) {
    const before = rows.at(-1)?.[0];
    if (before?.label === line.label && before.loud === line.loud) rows.at(-1)?.push(line);
    else rows.push([line]);
  }
  return rows;
}

/** The sheet itself, as it lies on the screen and on paper. */
export function Paper({ lines }: { lines: readonly SheetLine[] }) {
  return (
    <article>
      {sectionsOf(lines).map(({ title, caution, blocks }, at) => (
        <section key={title ?? at} class="paper-section">
          {title && <h2 class="paper-title">{title}</h2>}
          {blocks.map(({ heading, fields }, index) => (
            <div class={heading ? 'paper-block' : 'paper-block paper-list'} key={index}>
              {heading && <h3 class="paper-heading">{heading}</h3>}
              <dl>
                {underOneLabel(fields).map((lines, row) => (
                  <div class={lines[0]?.loud ? 'paper-field paper-loud' : 'paper-field'} key={row}>
                    <dt>
                      {lines[0]?.loud && <Icon name="warning" sizePx={18} />}
                      {lines[0]?.label}
                    </dt>
                    {lines.map(({ text }, at) => (
                      <dd key={at}>{text}</dd>
                    ))}
                  </div>
                ))}
              </dl>
            </div>
          ))}
          {caution && <p class="paper-caution">{caution}</p>}
        </section>
      ))}
    </article>
  );
}
