import type { Coefficients } from '../season/coefficients';
import type { CropInput } from '../season/input';

/** Degree-days of a day above the crop's base temperature, never negative. */
export const degreeDays = (meanCelsius: number, baseCelsius: number): number =>
  Math.max(0, meanCelsius - baseCelsius);

/**
 * Crop coefficient by the progress of the season: flat, rising, flat, falling (FAO-56 Figure 34).
 *
 * @param progress 0 at the start, 1 at the usual end
 */
export function cropCoefficient(crop: CropInput, progress: number): number {
  const { stageShares, cropCoefficientStart: start, cropCoefficientMiddle: full } = crop;
  // by place: taking the list apart costs more than the sum
  const initial = stageShares[0];
  const development = stageShares[1];
  const middle = stageShares[2];
  const late = stageShares[3];
  if (progress <= initial) return start;
  if (progress < initial + development)
    return start + ((full - start) * (progress - initial)) / development;
  if (progress <= initial + development + middle || late <= 0) return full;
  const gone = Math.min(1, (progress - initial - development - middle) / late);
  return full + (crop.cropCoefficientEnd - full) * gone;
}

/** Share of the ground shaded: from the crop coefficient, not below 0.6 late in the season (model 6). */
export function canopyShare(
  crop: CropInput,
  coefficient: number,
  progress: number,
  c: Coefficients,
): number {
  const range = crop.cropCoefficientMiddle - crop.cropCoefficientStart;
  const grown = range > 0 ? (c.canopyLimit * (coefficient - crop.cropCoefficientStart)) / range : 0;
  const canopy = Math.min(c.canopyLimit, Math.max(0, grown));
  return progress > 0.6 ? Math.max(c.lateCanopyLeast, canopy) : canopy;
}

/** Root depth [mm]: in a straight line until 60 % of the season has passed, then full. */
export const rootDepthAt = (crop: CropInput, progress: number): number =>
  crop.fullRootDepth * Math.min(1, progress / 0.6);

/** Share of a lower layer that roots reach. */
export const reachShare = (
  rootMillimetres: number,
  topMillimetres: number,
  lowerMillimetres: number,
): number => Math.min(1, Math.max(0, (rootMillimetres - topMillimetres) / lowerMillimetres));
