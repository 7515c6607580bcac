/** All pictures by name. A name nobody has drawn gets a plain weight. */
import { CHANGES } from "./changes.js";
import { OBJECTS } from "./objects.js";
import { HEIGHTS, REACHES } from "./places.js";
import { REGIONS } from "./regions.js";
import { WAYS, locked } from "./ways.js";
import { WEIGHTS } from "./weights.js";

const ALL = { ...WEIGHTS, ...OBJECTS, ...HEIGHTS, ...REACHES, ...REGIONS, ...WAYS, ...CHANGES, locked };

/** Whether there is a picture of this name. */
export function hasPicture(name) {
  return Object.hasOwn(ALL, name);
}

/** Draws a picture; an unknown name gives a plain weight. */
export function drawPicture(name) {
  const picture = (hasPicture(name) ? ALL[name] : ALL.unknown)();
  picture.setAttribute("data-picture", name);
  return picture;
}
