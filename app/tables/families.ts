import { families, type FamilyId, type FamilyRow } from './families/families';
import { familyPlants } from './families/plants';

export { families, type FamilyId, type FamilyRow } from './families/families';
export { familyPlants } from './families/plants';
export { troubles, type KnownTrouble, type TroubleId } from './families/troubles';

/** The family row of that Latin name, as crop rows carry it; undefined when there is none. */
export const familyOf = (latinName: string): FamilyRow | undefined =>
  Object.hasOwn(families, latinName) ? families[latinName as FamilyId] : undefined;

/** The family of a plant that has no crop row, by its plain name; undefined when nobody listed it. */
export function familyOfPlant(plainName: string): FamilyId | undefined {
  const wanted = plainName.trim().toLowerCase();
  const ids = Object.keys(families) as FamilyId[];
  return ids.find((id) =>
    Object.values(familyPlants[id]).some((names) =>
      names.some((name) => name.toLowerCase() === wanted),
    ),
  );
}
