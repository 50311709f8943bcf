import type { Shop } from '../shop/model.js';
import { chosen, chosenAtEnd, fittingNamed } from './choices.js';
import type { Joint } from './model.js';
import { roleOf } from './roles.js';
import type { Meeting, Standing } from './standing.js';

/** Every place where the end of one panel stands against the face of another, in the order of the panels. */
export function buildJoints(standing: Standing, shop: Shop): readonly Joint[] {
  return standing.panels
    .flatMap((panel) => roleOf(panel).meetings(panel, standing))
    .map((meeting) => joint(standing, shop, meeting));
}

/** What is chosen for the joint alone holds for both panels. What one panel chooses holds for the other too, unless that one chooses for itself. */
function joint({ spec }: Standing, shop: Shop, { end, at, face, on, stagger }: Meeting): Joint {
  const usual = roleOf(end).joint?.(spec) ?? spec.joint;
  const own = chosenAtEnd(spec, end.key, at, 'joint');
  const [endOwn, faceOwn] = [chosen(spec, end.key, 'joint'), chosen(spec, face.key, 'joint')];
  return {
    id: `${end.key}/${face.key}`,
    facePanel: face.key,
    face: on,
    endPanel: end.key,
    end: at,
    fitting: fittingNamed(shop, (own ?? endOwn ?? faceOwn ?? usual).value),
    faceFitting: fittingNamed(shop, (own ?? faceOwn ?? endOwn ?? usual).value),
    stagger,
    place: end.place,
    path: end.path,
  };
}
