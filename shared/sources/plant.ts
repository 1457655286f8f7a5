import type { Source } from './source.ts';

/** Documents on pipes, boilers, radiators and sensors. */
export const plantSources = {
  en442: {
    title: 'EN 442, Radiators and convectors',
    year: 2014,
    kind: 'from memory',
    note: 'Rating point 75/65/20 °C; the factor 1.267 at 60 K is a printed trade value. The year is from memory.',
  },
  pipeTables: {
    title: 'Trade tables of heat loss from copper pipe',
    year: null,
    kind: 'common practice',
    note: 'Published figures differ by a factor of two; shown as a band.',
  },
  en1057: {
    title:
      'EN 1057, Copper and copper alloys: seamless, round copper tubes for water and gas in sanitary and heating applications',
    year: 2010,
    kind: 'from memory',
    note: 'Walls as usually sold and the year are from memory; the contents of 15 and 22 mm agree with printed ones.',
  },
  haaland: {
    title:
      'Haaland, Simple and explicit formulas for the friction factor in turbulent pipe flow, J. Fluids Eng. 105(1) 89-90',
    year: 1983,
    kind: 'from memory',
    note: 'Compared with the implicit equation of Colebrook, which it stands for: within 2 %.',
  },
  whiteFluid: {
    title: 'White, Fluid Mechanics',
    year: 2011,
    kind: 'from memory',
    note: 'Textbook on flow in pipes; its table of friction factors and its example are from memory, and so is the edition.',
  },
  whiteCoil: {
    title: 'White, Streamline flow through curved pipes, Proc. R. Soc. A 123, 645-663',
    year: 1929,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library, with a printed check.',
  },
  moriNakayama: {
    title:
      'Mori and Nakayama, Study on forced convective heat transfer in curved pipes (2nd report, turbulent region), Int. J. Heat Mass Transfer 10(1) 37-59',
    year: 1967,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library, with a printed check; title and pages are from memory.',
  },
  fittings: {
    title: 'Equivalent lengths of pipe fittings as tabled in the trade',
    year: null,
    kind: 'from memory',
    note: 'Multiples of the bore; tables differ by half.',
  },
  chandrupatla: {
    title:
      'Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without using derivatives, Adv. Eng. Software 28(3) 145-149',
    year: 1997,
    kind: 'from memory',
    note: 'The method is from memory; tests hold its answers to known zeros.',
  },
  boilerCurve: {
    title:
      'Handbook curve of the gross efficiency of condensing gas boilers against return temperature',
    year: null,
    kind: 'from memory',
    note: 'Its shape is from memory; three points read on public pages hold it in place.',
  },
  boilerAnchors: {
    title: 'Public pages on condensing boilers',
    year: null,
    kind: 'common practice',
    note: 'Read: dew point about 55 °C or 130 °F and 88 % there; not above 89 % at 82/71 °C; 93 % and more at 49/38 °C; gross.',
  },
  ecodesignBoilers: {
    title: 'Commission Regulation (EU) No 813/2013, ecodesign of space and combination heaters',
    year: 2013,
    kind: 'published',
    note: 'Regimes and the least seasonal efficiency read; the weights 0.15 and 0.85 of the seasonal mean are from memory.',
  },
  steffen: {
    title:
      'Steffen, A simple method for monotonic interpolation in one dimension, Astronomy and Astrophysics 239, 443-450',
    year: 1990,
    kind: 'from memory',
    note: 'Slopes that let a smooth curve through points neither overshoot nor turn; from memory.',
  },
  sutherland: {
    title: 'White, Viscous Fluid Flow: Sutherland’s law for air',
    year: 2006,
    kind: 'from memory',
    note: 'Constants and edition from memory; within 1 % of textbook tables and of the standard atmosphere.',
  },
  handbookSurfaces: {
    title: 'Handbook values for the emissivity of surfaces',
    year: null,
    kind: 'from memory',
    note: 'Copper bright 0.03 to 0.05, oxidised 0.2 to 0.8; paint, paper and plastics 0.85 to 0.95.',
  },
  iec60539: {
    title: 'IEC 60539-1, Directly heated negative temperature coefficient thermistors',
    year: 2016,
    kind: 'from memory',
    note: 'Zero-power resistance at 25 °C and B between two temperatures; the year is from memory too.',
  },
  steinhartHart: {
    title:
      'Steinhart and Hart, Calibration curves for thermistors, Deep-Sea Research 15(4) 497-503',
    year: 1968,
    kind: 'from memory',
    note: 'The equation with three coefficients, as it is used ever since.',
  },
  iec60751: {
    title: 'IEC 60751, Industrial platinum resistance thermometers',
    year: 2008,
    kind: 'from memory',
    note: 'Coefficients from 0 °C upwards and the tolerance of class B; the year is from memory too.',
  },
  iec60228: {
    title: 'IEC 60228, Conductors of insulated cables',
    year: 2004,
    kind: 'published',
    note: 'Largest resistance of flexible copper conductors at 20 °C, read second-hand; the year is from memory.',
  },
} as const satisfies Record<string, Source>;
