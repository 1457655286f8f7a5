import type { Source } from './source.ts';

/** Standards and guides for cylinders, safety, worked examples, and what is common practice. */
export const ruleSources = {
  en12897: {
    title: 'EN 12897, Specification for indirectly heated unvented storage water heaters',
    year: 2016,
    kind: 'from memory',
    note: 'Standing loss at 65 °C stored and 20 °C ambient was read second-hand.',
  },
  as1056: {
    title: 'AS 1056.1, Storage water heaters, general requirements',
    year: 1991,
    kind: 'published',
    note: 'That the loss is tested at 55 K above the air was read second-hand; title and year are from memory.',
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
  reductionTests: {
    title:
      'Sanden, Fields, Barbaree and Feeley, Viability of Legionella pneumophila in chlorine-free water at elevated temperatures, Curr. Microbiol. 18, 61-65',
    year: 1989,
    kind: 'published',
    note: 'The five times were read; names beyond the first, title and pages are from memory.',
  },
  reductionStrains: {
    title: 'Dennis, Green and Jones, A note on the temperature tolerance of Legionella',
    year: 1984,
    kind: 'from memory',
    note: 'Times for a tenfold reduction at 50, 54 and 58 °C, from memory.',
  },
  reductionPages: {
    title: 'Public pages that quote times for a stated number of tenfold reductions of Legionella',
    year: null,
    kind: 'common practice',
    note: 'Read second-hand; they differ by several times, and pages without that number are not used.',
  },
  scaldTable: {
    title: 'Scald times of adults above 60 °C as printed in advice on preventing burns',
    year: null,
    kind: 'from memory',
    note: '2 s at 64.4 °C, 1 s at 68.3 °C, half a second at 71.1 °C, from memory.',
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
