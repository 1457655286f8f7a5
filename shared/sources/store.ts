import type { Source } from './source.ts';

/** Documents on water, coils and stores. */
export const storeSources = {
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
  inletEddies: {
    title:
      'Zurigat, Liche and Ghajar, Influence of inlet geometry on mixing in thermocline thermal energy storage, Int. J. Heat Mass Transfer 34(1) 115-125',
    year: 1991,
    kind: 'from memory',
    note: 'Factors and exponents from memory, of medium trust; that the mixing decays as a hyperbola was read second-hand.',
  },
  layeringEddies: {
    title:
      'Karg Bulnes, Gluesenkamp and Rendall, IMECE2020-23369, on charging a household store from outside through its top',
    year: 2020,
    kind: 'published',
    note: 'Abstract only: layering spreads heat five times as fast as conduction; the wording of the title is ours.',
  },
  flowEddies: {
    title: 'Rendall and others, A Flow Rate Dependent 1D Model of a store of 50 US gallons',
    year: null,
    kind: 'published',
    note: 'Abstract only: the factor is bounded at Re 2100 and 10 000; the rest of the title and the year were not noted.',
  },
  measuredDraw: {
    title:
      'Journal of Solar Energy Engineering 131(1) 011011, on draws from a store of 0.70 m by 0.24 m with and without baffles',
    year: 2009,
    kind: 'published',
    note: 'Abstract only: no harm up to 11 cm/min of rise, mixing at 15.2 cm/min unless a baffle is fitted; the bore of the inlet was not seen and the wording of the title is ours.',
  },
  inletReview: {
    title:
      'Rendall and others, review of the Richardson number in stratified stores, Renew. Sust. Energy Rev. 150, 111471',
    year: 2021,
    kind: 'published',
    note: 'Abstract only: critical values from below 0.25 to 100; the wording of the title is ours.',
  },
  coolDownTest: {
    title:
      'Allard, Kummert, Bernier and Moreau, a test of storage water heaters, Building Simulation, Sydney',
    year: 2011,
    kind: 'published',
    note: 'Read second-hand: 93 W at 34 K over 2.6 m², 1.05 W/(m² K), and 1.04 from the cool-down; the wording of the title is ours.',
  },
  lumpedHeat: {
    title: 'Energy balance of a fully mixed store',
    year: null,
    kind: 'common practice',
    note: 'Follows from the definition of specific heat; no document needed.',
  },
  handbookMetals: {
    title: 'Handbook values for tube metals',
    year: null,
    kind: 'from memory',
    note: 'Copper tube 305 to 400, stainless steel 15 to 24 W/(m K).',
  },
} as const satisfies Record<string, Source>;
