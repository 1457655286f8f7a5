/**
 * Every document the bench cites, by key. `published`: a document with a title and a year. `common
 * practice`: used in the trade, no document behind it. `from memory`: known, not looked up again.
 */
export type SourceKind = 'published' | 'common practice' | 'from memory';

export interface Source {
  readonly title: string;
  readonly year: number | null;
  readonly kind: SourceKind;
  /** How far to trust it, in one sentence. */
  readonly note: string;
}

export const sources = {
  iapwsLiquid: {
    title: 'IAPWS SR6-08(2011), Supplementary Release on Properties of Liquid Water at 0.1 MPa',
    year: 2011,
    kind: 'published',
    note: 'Coefficients from a public transcription; they reproduce the verification table of the Release.',
  },
  churchillChu: {
    title:
      'Churchill and Chu, Correlating equations for laminar and turbulent free convection from a horizontal cylinder, Int. J. Heat Mass Transfer 18(9) 1049-1053',
    year: 1975,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library.',
  },
  morgan: {
    title:
      'Morgan, The overall convective heat transfer from smooth circular cylinders, Advances in Heat Transfer 11, 199-264',
    year: 1975,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library; it jumps at its borders.',
  },
  mates: {
    title:
      'Mates, Model for an Immersed, Collector Side Heat Exchanger, MS thesis, University of Wisconsin-Madison',
    year: 1987,
    kind: 'published',
    note: 'Abstract only: four immersed exchangers gave 1.3 to 1.8 times Morgan.',
  },
  schmidt: {
    title:
      'Schmidt, Wärmeübergang und Druckverlust in Rohrschlangen, Chemie-Ing.-Technik 39(13) 781-789',
    year: 1967,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library, with printed checks.',
  },
  vdiCoil: {
    title: 'VDI Heat Atlas, chapter G3, Heat transfer in helically coiled tubes (Gnielinski)',
    year: 2010,
    kind: 'from memory',
    note: 'The formulas and the year of the edition are from memory.',
  },
  gnielinski: {
    title:
      'Gnielinski, New equations for heat and mass transfer in turbulent pipe and channel flow, Int. Chem. Eng. 16, 359-368',
    year: 1976,
    kind: 'published',
    note: 'Read second-hand in the documentation of an engineering library.',
  },
  dittusBoelter: {
    title: 'Dittus and Boelter, Heat transfer in automobile radiators of the tubular type',
    year: 1930,
    kind: 'published',
    note: 'In its usual later form; read second-hand in the documentation of an engineering library.',
  },
  kaysLondon: {
    title: 'Kays and London, Compact Heat Exchangers',
    year: 1984,
    kind: 'from memory',
    note: 'Textbook effectiveness relation; the edition is from memory.',
  },
  incropera: {
    title: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer',
    year: 1996,
    kind: 'published',
    note: 'The problem statement was read second-hand; its printed answer and the edition are from memory.',
  },
  carslawJaeger: {
    title: 'Carslaw and Jaeger, Conduction of Heat in Solids',
    year: 1959,
    kind: 'from memory',
    note: 'Textbook solutions; the edition is from memory.',
  },
  levenspiel: {
    title: 'Levenspiel, Chemical Reaction Engineering',
    year: 1999,
    kind: 'from memory',
    note: 'Tanks in series; the edition is from memory.',
  },
  ogataBanks: {
    title:
      'Ogata and Banks, A solution of the differential equation of longitudinal dispersion in porous media, USGS Professional Paper 411-A',
    year: 1961,
    kind: 'published',
    note: 'The paper number is from memory.',
  },
  pezzin: {
    title:
      'Pezzin, Giansetti and Ferri, Influence of limescale on heating elements efficiency (conference abstract)',
    year: 2013,
    kind: 'published',
    note: 'Abstract: calcium carbonate scale 2.2 W/(m K).',
  },
  en442: {
    title: 'EN 442, Radiators and convectors',
    year: 2014,
    kind: 'from memory',
    note: 'Rating point 75/65/20 °C; the factor 1.267 at 60 K is a printed trade value. The year is from memory.',
  },
  en12897: {
    title: 'EN 12897, Specification for indirectly heated unvented storage water heaters',
    year: 2016,
    kind: 'from memory',
    note: 'Standing loss at 65 °C stored and 20 °C ambient was read second-hand.',
  },
  ecodesignTanks: {
    title: 'Commission Regulation (EU) No 814/2013, ecodesign of water heaters and storage tanks',
    year: 2013,
    kind: 'published',
    note: 'Tables and definitions read; the class C formula read second-hand, since copies print it as an image.',
  },
  labelTanks: {
    title:
      'Commission Delegated Regulation (EU) No 812/2013, labelling of water heaters and storage tanks',
    year: 2013,
    kind: 'from memory',
    note: 'Class bounds from memory; A to E were also seen second-hand.',
  },
  ukServicesGuide: {
    title: 'Domestic Building Services Compliance Guide',
    year: 2013,
    kind: 'from memory',
    note: 'Standing-loss limit formula from memory.',
  },
  bs6700: {
    title: 'BS 6700, Services supplying water for domestic use within buildings',
    year: 2006,
    kind: 'published',
    note: 'Annex C: the reheat rule was read; parts of its worked cases are from memory.',
  },
  sap: {
    title: 'The Government Standard Assessment Procedure for Energy Rating of Dwellings, SAP 10.2',
    year: 2021,
    kind: 'published',
    note: 'Tables read second-hand and checked by reproducing printed worked numbers.',
  },
  isotonic: {
    title:
      'Manabe and Strickler, Thermal equilibrium of the atmosphere with a convective adjustment',
    year: 1964,
    kind: 'from memory',
    note: 'Convective adjustment; the unique answer is the weighted isotonic regression of the profile.',
  },
  duffieBeckman: {
    title: 'Duffie and Beckman, Solar Engineering of Thermal Processes',
    year: 2013,
    kind: 'from memory',
    note: 'One-dimensional stratified store, chapter 8; the edition is from memory.',
  },
  pipeTables: {
    title: 'Trade tables of heat loss from copper pipe',
    year: null,
    kind: 'common practice',
    note: 'Published figures differ by a factor of two; shown as a band.',
  },
  heatUpTable: {
    title: 'Trade table of heating times for a cylinder from 10 °C to 50 °C',
    year: null,
    kind: 'common practice',
    note: 'Printed whole minutes, computed with 4.2 kJ/(kg K).',
  },
  cityGuilds: {
    title: 'City and Guilds Textbook: Plumbing, Book 1',
    year: null,
    kind: 'published',
    note: 'Worked examples as printed; the year of the edition was not seen.',
  },
  textbookExamples: {
    title: 'Worked examples printed in open teaching pages',
    year: null,
    kind: 'common practice',
    note: 'Plain energy arithmetic, printed to two or three figures.',
  },
  practice: {
    title: 'Common practice, no source',
    year: null,
    kind: 'common practice',
    note: 'Used in the trade; no document was found.',
  },
  handbookMetals: {
    title: 'Handbook values for tube metals',
    year: null,
    kind: 'from memory',
    note: 'Copper tube 305 to 400, stainless steel 15 to 24 W/(m K).',
  },
  lumpedHeat: {
    title: 'Energy balance of a fully mixed store',
    year: null,
    kind: 'common practice',
    note: 'Follows from the definition of specific heat; no document needed.',
  },
  hsg274: {
    title: 'HSE HSG274 part 2, The control of legionella bacteria in hot and cold water systems',
    year: 2014,
    kind: 'from memory',
    note: 'Stored at 60 °C or more and over 50 °C at the outlet within 1 min, read second-hand; the year is from memory.',
  },
  legionellaRange: {
    title: 'Public guidance pages on temperature and Legionella',
    year: null,
    kind: 'common practice',
    note: 'Growth from 20 to 45 °C, most near 37 °C; a weekly hour at 60 °C or more is usual practice.',
  },
  scaldTimes: {
    title:
      'Moritz and Henriques, Studies of thermal injury II, Am. J. Pathol. 23, 695-720, as tabled for adult skin',
    year: 1947,
    kind: 'published',
    note: 'Read second-hand in a table and in a curve fitted to the same data, which differ by up to two times; the journal and pages are from memory.',
  },
  waterSafetyG: {
    title: 'Approved Document G, Sanitation, hot water safety and water efficiency (England)',
    year: 2015,
    kind: 'from memory',
    note: 'Safety devices of unvented stores and hot outlets read second-hand in a college textbook; the year is from memory.',
  },
  gasSafety: {
    title: 'Gas Safety (Installation and Use) Regulations',
    year: 1998,
    kind: 'from memory',
    note: 'Gas work by registered engineers only; other countries have their own law.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
