/** One cell of comma-separated text: in quotation marks where it would not stand alone, empty for nothing. */
export function csvCell(cell: number | string | null): string {
  const text = cell === null ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
