import type { Habit } from '../data';

const tapRooted = new Set<Habit>([
  'climber',
  'bush',
  'staked',
  'stalk',
  'root',
  'clover',
  'flower',
  'vine',
]);
const rounded = (value: number): number => Math.round(value * 10) / 10;

/**
 * Roots of one plant from its foot down: one of them ends at the depth, none below it. A tap root
 * with arms, or a bundle.
 *
 * @param reach px to each side that they may take
 */
export function drawRoots(
  habit: Habit,
  x: number,
  y: number,
  depth: number,
  reach: number,
): string {
  if (depth <= 0) return '';
  const at = (dx: number, dy: number): string => `${rounded(x + dx)} ${rounded(y + dy)}`;
  if (!tapRooted.has(habit)) {
    return [
      [-0.9, 0.42],
      [-0.5, 0.74],
      [-0.1, 1],
      [0.4, 0.82],
      [0.85, 0.5],
    ]
      .map(
        ([across = 0, down = 0]) =>
          `M${at(across * 1.5, 0)}C${at(across * reach * 0.5, depth * down * 0.25)} ${at(across * reach, depth * down * 0.5)} ${at(across * reach * 0.9, depth * down)}`,
      )
      .join('');
  }
  const sway = Math.min(3, reach * 0.2);
  const tap = `M${at(0, 0)}C${at(sway, depth * 0.3)} ${at(-sway, depth * 0.65)} ${at(0, depth)}`;
  const arms = [0.14, 0.26, 0.4, 0.55, 0.7].map((from, arm) => {
    const side = arm % 2 === 0 ? 1 : -1;
    const length = reach * (1 - from * 0.75);
    const drop = Math.min(depth * 0.2, length * 0.7);
    return `M${at(0, depth * from)}Q${at(side * length * 0.5, depth * from + drop * 0.2)} ${at(side * length, depth * from + drop)}`;
  });
  return tap + arms.join('');
}
