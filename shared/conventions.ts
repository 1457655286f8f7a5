// The conditions at which settings are stated and properties are taken: model and explanation use the same.

/** Where density, viscosity and heat held by primary water are taken, °C. From 40 to 80 °C its heat changes by 2 %. */
export const PRIMARY_TEMPERATURE = 65;

/** At which resistances are stated, m³/s: 15 l/min. Common practice, no source: the usual flow at which coils are rated. */
export const REFERENCE_FLOW = 15 / 60_000;

/** Return at which a boiler’s output is rated, °C; source: ecodesignBoilers, high-temperature regime. */
export const RATED_RETURN = 60;

/** Flow less return of radiators on the design day, K; source: en442, rating condition 75 °C in and 65 °C out. */
export const DESIGN_SPREAD = 10;

/** The warmest time of a day, s after midnight. Common practice, no source: mid-afternoon. */
export const WARMEST = 15 * 3600;

/** Where the loss of a primary pipe is taken, °C; for each kelvin it rises by a fifth from 50 to 80 °C. */
export const PIPE_TEMPERATURE = 70;
