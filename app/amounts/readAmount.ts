import type { Quantity } from '../core/lawn/quantity';
import { failure, success, type Result } from '../core/result';
import type { ShownUnit } from '../core/shownUnit';
import type {
  AmountFailure,
  AmountField,
  AmountReading,
  KnownLawn,
  ReadingContext,
  Refusal,
  TypedUnit,
} from './amount';
import { isVolume, type Value } from './arithmetic';
import { genericContainers } from './genericContainers';
import { limits, limitText, tidyNumber } from './limits';
import { suggestionFor } from './suggest';
import { dimensionOf, understand, type Said, type Understood } from './understand';
import { unitsOf, type UnitSet } from './unitSystem';
import { shownUnitOf } from './unitWords';

const refuse = (refusal: Refusal): Result<never, Refusal> => failure(refusal);

function tooLarge(value: number, limit: number, unit: ShownUnit): Result<never, Refusal> | null {
  return value > limit ? refuse({ kind: 'too-large', limit: limitText(limit, unit) }) : null;
}

function mown(area: number, metresOff: number, units: UnitSet): Result<Quantity, Refusal> {
  const areaM2 = tidyNumber(area);
  const heightMillimetres = tidyNumber(metresOff * 1000);
  const refused =
    tooLarge(areaM2, limits.lawnM2, units.area) ??
    tooLarge(heightMillimetres, limits.cutMillimetres, units.depth);
  return refused ?? success({ kind: 'mown', areaM2, heightMillimetres });
}

function simple(
  value: Value,
  field: AmountField,
  context: ReadingContext,
): Result<Quantity, Refusal> {
  const amount = tidyNumber(value.amount);
  const found = dimensionOf(value);
  const units = unitsOf(context.units);
  const wrong = refuse({ kind: 'wrong-dimension', found });
  switch (found) {
    case 'number': {
      const [usual] = context.containers;
      if (!context.bareNumber || !usual) return refuse({ kind: 'no-unit', number: amount });
      return simple({ ...value, container: usual }, field, context);
    }
    case 'containers':
      if (amount > limits.containers)
        return refuse({
          kind: 'too-large',
          limit: `${limits.containers} ${value.container?.plural ?? ''}`,
        });
      return success({ kind: 'containers', count: amount, containerId: value.container?.id ?? '' });
    case 'volume':
      return (
        tooLarge(tidyNumber(amount * 1000), limits.litres, units.volume) ??
        success({ kind: 'volume', litres: tidyNumber(amount * 1000) })
      );
    case 'mass':
      return (
        tooLarge(amount, limits.kilograms, units.mass) ??
        success({ kind: 'mass', kilograms: amount })
      );
    case 'length':
      if (field !== 'layer') return wrong;
      return (
        tooLarge(tidyNumber(amount * 1000), limits.depthMillimetres, units.depth) ??
        success({ kind: 'depth', millimetres: tidyNumber(amount * 1000) })
      );
    default:
      return wrong;
  }
}

/** "3 bags, 5 kg each" */
function filled(containers: Said, content: Said): Value | null {
  if (!containers.value.container || !content.each) return null;
  const { value } = content;
  if (!isVolume(value) && dimensionOf(value) !== 'mass') return null;
  return { ...value, amount: containers.value.amount * value.amount };
}

const positive = (value: Value): Result<never, Refusal> | null => {
  if (value.amount === 0) return refuse({ kind: 'zero' });
  return value.amount < 0 ? refuse({ kind: 'negative' }) : null;
};

function quantityOf(
  understood: Understood,
  field: AmountField,
  context: ReadingContext,
): Result<Quantity, Refusal> {
  const units = unitsOf(context.units);
  const [first, second, third] = understood.said;
  if (!first) return refuse({ kind: 'not-an-amount' });
  if (third) return refuse({ kind: 'two-amounts' });
  const refused = positive(first.value) ?? (second ? positive(second.value) : null);
  if (refused) return refused;
  if (!second) {
    if (!first.off || dimensionOf(first.value) !== 'length')
      return simple(first.value, field, context);
    if (field !== 'mowing') return refuse({ kind: 'not-an-amount' });
    const lawn = lawnMeant(understood, context);
    return lawn ? mown(lawn.areaM2, first.value.amount, units) : refuse({ kind: 'no-lawn' });
  }
  const whole = filled(first, second) ?? filled(second, first);
  if (whole) return simple(whole, field, context);
  const both = [first, second];
  const area = both.find((said) => dimensionOf(said.value) === 'area');
  const height = both.find((said) => dimensionOf(said.value) === 'length');
  if (field !== 'mowing' || !area || !height) return refuse({ kind: 'two-amounts' });
  return mown(area.value.amount, height.value.amount, units);
}

const lawnMeant = (understood: Understood, context: ReadingContext): KnownLawn | null =>
  understood.lawn ?? context.lawns?.find((lawn) => lawn.id === context.lawnId) ?? null;

function unitIn(understood: Understood): TypedUnit | null {
  const unit = understood.said.find((said) => said.unit)?.unit;
  return unit ? { dimension: unit.dimension, shown: shownUnitOf(unit, 'mm') } : null;
}

function read(
  text: string,
  field: AmountField,
  context: ReadingContext,
): Result<AmountReading, Refusal> {
  const understood = understand(text, context, { sharedUnits: false, mown: field === 'mowing' });
  if (!understood.ok) {
    const { error } = understood;
    return error.kind === 'unknown-unit' && genericContainers.has(error.word)
      ? refuse({ kind: 'unknown-container', word: error.word })
      : understood;
  }
  const quantity = quantityOf(understood.value, field, context);
  if (!quantity.ok) return quantity;
  const { certainty, wetness, condition, lawn, placeId, day } = understood.value;
  return success({
    amount: { text: text.trim(), quantity: quantity.value, certainty },
    wetness,
    condition,
    lawnId: lawn?.id ?? null,
    placeId,
    day,
    unit: quantity.value.kind === 'containers' ? null : unitIn(understood.value),
  });
}

/**
 * Reads how much of a stuff there is, the way people say it: "2 bags", "a bag and a half",
 * "6 kg, soaked", "1 1/2 bushels", "3 bags * 35 L", "220 m2, 2 cm off", "about 2 bags on 8 June".
 *
 * | field | takes |
 * |---|---|
 * | mowing | containers, volume, mass, area mown and height taken off |
 * | layer | containers, volume, mass, depth |
 * | stock | containers, volume, mass |
 *
 * "2 cm off" without an area means the lawn named or the lawn chosen in the form. A container
 * added to another is counted in the first, so that weighing it still tells. Dates are read only
 * when `context.today` is given, and never lie after it.
 *
 * @returns the amount in our inside units with the words typed; a failure carries an entry that
 *   can be read (`suggestion`). Nothing typed makes it throw.
 */
export function readAmount(
  text: string,
  field: AmountField,
  context: ReadingContext,
): Result<AmountReading, AmountFailure> {
  const reading = read(text, field, context);
  if (reading.ok) return reading;
  const reads = (candidate: string): boolean => read(candidate, field, context).ok;
  const suggestion = suggestionFor(reading.error, text, field, context, reads);
  return failure({ ...reading.error, field, suggestion });
}
