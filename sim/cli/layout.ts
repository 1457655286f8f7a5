const width = 100;

/** Text wrapped to the width of a page, the first line behind a lead, the others as far in. */
export function paragraph(text: string, lead = ''): string {
  const lines: string[] = [];
  let line = lead;
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(lead.length);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n');
}

/** Rows of two cells, the second starting at one place. */
export function columns(rows: readonly (readonly string[])[]): string {
  const first = Math.max(0, ...rows.map(([label]) => label.length));
  return rows.map(([label, value]) => `  ${label.padEnd(first)}  ${value}`).join('\n');
}

/** Rows of several cells, each column as wide as its widest. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = rows.reduce<number[]>(
    (widest, row) => row.map((cell, column) => Math.max(widest[column] ?? 0, cell.length)),
    [],
  );
  return rows
    .map((row) =>
      `  ${row.map((cell, column) => cell.padEnd(widths[column])).join('  ')}`.trimEnd(),
    )
    .join('\n');
}
