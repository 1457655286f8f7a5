import { figure } from '../../../shared/format.ts';

/** A coefficient of heat transfer as it reads. @param h  W/(m² K) */
export const perSquareMetre = (h: number): string =>
  `${figure(Number(h.toPrecision(3)), 0)}\u00a0W/(m²\u00a0K)`;
