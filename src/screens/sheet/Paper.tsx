import { Icon } from '../../controls/Icon.tsx';
import type { SheetLine } from '../../exchange/sheetLine.ts';

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

/** The sheet itself, as it lies on the screen and on paper. */
export function Paper({ lines }: { lines: readonly SheetLine[] }) {
  return (
    <article class="paper">
      {sectionsOf(lines).map(({ title, caution, blocks }, at) => (
        <section key={title ?? at} class="paper-section">
          {title && <h2 class="paper-title">{title}</h2>}
          {blocks.map(({ heading, fields }, index) => (
            <div class={heading ? 'paper-block' : 'paper-block paper-list'} key={index}>
              {heading && <h3 class="paper-heading">{heading}</h3>}
              <dl class="paper-fields">
                {fields.map(({ label, text, loud }, row) => (
                  <div class={loud ? 'paper-field paper-loud' : 'paper-field'} key={row}>
                    <dt>
                      {loud && <Icon name="warning" sizePx={18} />}
                      {label}
                    </dt>
                    <dd>{text}</dd>
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
