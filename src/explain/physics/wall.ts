import { percent, settingText } from '../../../shared/format.ts';
import { coilParts } from '../coilParts.ts';
import type { Section } from './section.ts';
import { part, shownIn, tell } from './tell.ts';

export const wall: Section = {
  id: 'wall',
  title: 'The wall and the scale',
  said: (here) => {
    const { coil } = here.result.variant;
    const parts = coilParts(here.result, here.reading);
    if (parts === null) {
      return [
        tell`Between the two films lie the ${part('wall', 'coil.wall')} of the tube and the ${part('scale', 'coil.scale')} on it; ${coil.given === 'conductance' ? 'in a UA that is given as a whole both are already counted.' : 'while the coil is at rest nothing passes them.'}`,
      ];
    }
    const shareOf = (R: number) => percent(R * parts.U);
    const metal = settingText('coil.tubeMaterial', coil.tubeMaterial);
    return [
      tell`A wall of ${metal} takes ${part(shareOf(parts.Rw), 'coil.wall')} of the difference between primary and store. ${coil.tubeMaterial === 'copper' ? 'Copper conducts so well that its thickness hardly matters.' : 'It conducts far less than copper would.'}`,
      parts.Rs > 0
        ? tell`Scale of ${settingText('coil.scaleThickness', coil.scaleThickness)} takes ${part(shareOf(parts.Rs), 'coil.scale')}: a thin, hard coat of stone on the side of the stored water, which no flow and no boiler makes up for.`
        : tell`The coil is ${part('clean', 'coil.scale')} here. A millimetre of scale would hold back more than the whole wall does, for stone conducts less than a hundredth of what copper does.`,
    ];
  },
  formulas: (here) => {
    const wallAndScale = [
      ...shownIn(here, 'coil.wall', 'tubeWall'),
      ...shownIn(here, 'coil.scale', 'scale'),
    ];
    return wallAndScale.length > 0 ? wallAndScale : shownIn(here, 'coil.wall');
  },
  further: [{ label: 'what the coil conducts', key: 'coil.overall' }],
};
