import { ohmsAsked } from '../../shared/ohmsAsked.ts';

/** What `--help` prints. */
export const help = `Reheat Bench: how a hot water cylinder reheats, and why it is slow.

  npm run -s reheat -- FILE           run the variant in FILE and print what was found
  npm run -s reheat -- -              read the variant from standard input
  npm run -s reheat -- batch STUDY    compute many variants, a row for each; batch --help says how

  --day            the day of hot water in use in place of the reheat: every draw, what the store
                   was left at, how warm it was kept, and what it gives in one draw
  --why            why it takes so long: its minutes shared out over the causes, and what each
                   practical change would save, in place of the reheat
  --spread         what is not known for certain leaves open of the reheat: low, median and high of
                   256 cases, and how much of the scatter each unknown explains
  --variant X      the variant X, A to D, of a file that holds several
  --csv OUT        also write the traces to OUT, units in the headers
  --json           print the whole result as JSON, units in the keys
  --examples       list the examples (invented data)
  --example NAME   print the variant of an example, a file to start from
  --settings       print every setting of a file with its limits and default
  --help           print this

  --ohms N         without a file: the temperature at which a thermistor has N ohms, with its band
  --degrees N      without a file: its ohms at N °C, with their band
  --r25 N          for both: its ohms at 25 °C, as a rule ${ohmsAsked.r25.default}
  --beta N         for both: its beta in kelvins, as a rule ${ohmsAsked.beta.default}
  --tolerance N    for both: how exact R25 and beta are, each in percent either way, as a rule
                   ${ohmsAsked.tolerance.default}

Exit code: 0 done; 1 a fault in this program; 2 something in the input to put right; 3 the run
ended early, with what was found until then.

Safety: the results are calculations. Water at 60 °C scalds, water stored cooler can breed
Legionella, and work on unvented cylinders and gas is for licensed people. Local codes, the maker's
instructions and licensed practice come first.
`;
