import { askedFileKey, askedRows } from '../../../shared/asked.ts';
import { columns } from '../layout.ts';

/** What `batch --help` prints. */
export const batchHelp = `Reheat Bench, batch: many variants of one installation, a row of numbers for each.

  npm run -s reheat -- batch STUDY    compute every row of STUDY, a JSON file (- for standard input)

  --out FILE       write the rows to FILE in place of standard output
  --resume         go on with FILE where it was interrupted; begin it where there is none
  --part i/n       only part i of n, to share the rows out over machines
  --format F       ndjson (one JSON object a line) or csv; as a rule by the ending of FILE, else ndjson
  --jobs N         workers; as a rule one on each core
  --measures       list the measures that a study may ask for
  --help           print this

A study:

  {
    "format": "reheat-bench study",
    "version": 1,
    "base": { "example": "healthy-house" },
    "grid": {
      "coil.scaleThicknessMillimetres": { "from": 0, "to": 2, "count": 5 },
      "boiler.outputKilowatts": [12, 18, 24]
    },
    "measures": ["recoveryMinutes", "usableAtSatisfiedLitres"]
  }

base starts from "example", from "file" (a variant, found from where the study is) or from the
defaults, and "settings" put over it as in a variant's file. In place of "grid" a study may have
"rows", the name of a CSV file with a setting in each column, named as --settings names it with its
unit, and a row for each point; an empty cell leaves the setting as it is. The columns "name" and
"source" may come first, as in a catalogue saved from the app. Of a grid the last setting changes
from row to row.

Each row has its number, a mark of the study and the program (rows with the same mark belong
together), its name and source where the table has them, the settings, the measures in the unit
their name ends in with every digit, and a note where a value is missing or a setting has no say.
Rows come in order, whatever the number of workers.

Killed at any moment and started again with --resume, FILE comes out the same to the byte. The parts
of --part, one after the other, are the whole; a CSV header stands in part 1 alone. So any queue can
run a study: one job for each part, each with --out and --resume, and at the end, for 8 parts,
  cat rows-1.csv rows-2.csv ... rows-8.csv > rows.csv

Exit code: 0 done; 1 a fault in this program; 2 something in the input to put right; 3 done, and in
at least one row the run ended early. Cautions that apply to any row are printed at the end, apart
from the rows (stderr).
`;

/** What `batch --measures` prints. */
export function measuresTable(): string {
  return `${columns(askedRows.map(({ key, label }) => [askedFileKey(key), label]))}\n`;
}
