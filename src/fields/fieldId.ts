import type { FieldPath } from '../../shared/variant.ts';

/** The id of the control of a setting, so that a list can send the focus there. */
export const fieldId = (path: FieldPath): string => `field-${path.replace('.', '-')}`;
