/**
 * Water in a cylinder with flat ends, m³.
 * @param diameter  inside, m
 * @param height    inside, m
 */
export function cylinderVolume(diameter: number, height: number): number {
  return (Math.PI * diameter * diameter * height) / 4;
}
