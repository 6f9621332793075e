/** Strokes of one plant, gathered into a path for each of its parts; x to the right, y down, foot at 0, 0. */
export const partNames = ['support', 'stem', 'leaf', 'vein', 'bloom', 'fruit', 'store'] as const;
export type PartName = (typeof partNames)[number];

const rounded = (value: number): number => Math.round(value * 10) / 10;

export class Pen {
  private readonly paths = new Map<PartName, string[]>();
  private readonly x: number;
  private readonly y: number;
  private readonly under: number;

  /**
   * @param x, y where the plant's foot is in the drawing
   * @param under px from there down to the soil: what is stored lies in it, whatever the plant stands on
   */
  constructor(x: number, y: number, under = 0) {
    this.x = x;
    this.y = y;
    this.under = under;
  }

  private put(part: PartName, path: string): void {
    const kept = this.paths.get(part);
    if (kept) kept.push(path);
    else this.paths.set(part, [path]);
  }

  private at(x: number, y: number, part: PartName): string {
    const down = part === 'store' ? this.under : 0;
    return `${rounded(this.x + x)} ${rounded(this.y + y + down)}`;
  }

  /** A stroke from place to place, bent towards a point beside it. */
  bend(part: PartName, fromX: number, fromY: number, x: number, y: number, lean = 0): void {
    const middleX = (fromX + x) / 2 - (y - fromY) * lean;
    const middleY = (fromY + y) / 2 + (x - fromX) * lean;
    this.put(
      part,
      lean === 0
        ? `M${this.at(fromX, fromY, part)}L${this.at(x, y, part)}`
        : `M${this.at(fromX, fromY, part)}Q${this.at(middleX, middleY, part)} ${this.at(x, y, part)}`,
    );
  }

  /** A leaf from its stalk to its tip; `belly`: half its width over its length. */
  leaf(
    x: number,
    y: number,
    alongX: number,
    alongY: number,
    belly = 0.28,
    part: PartName = 'leaf',
  ) {
    const sideX = -alongY * belly * 2;
    const sideY = alongX * belly * 2;
    const halfX = x + alongX * 0.45;
    const halfY = y + alongY * 0.45;
    this.put(
      part,
      `M${this.at(x, y, part)}Q${this.at(halfX + sideX, halfY + sideY, part)} ${this.at(x + alongX, y + alongY, part)}Q${this.at(halfX - sideX, halfY - sideY, part)} ${this.at(x, y, part)}Z`,
    );
  }

  /** A leaf by its angle from upright, in degrees to the right. */
  leafAt(x: number, y: number, degrees: number, length: number, belly = 0.28): void {
    const angle = (degrees * Math.PI) / 180;
    this.leaf(x, y, Math.sin(angle) * length, -Math.cos(angle) * length, belly);
  }

  /** A broad leaf with five lobes, spread over its stalk's end; its tip `radius` above. */
  lobed(x: number, y: number, radius: number): void {
    const points = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((at) => {
      const angle = ((-124 + 31 * at) * Math.PI) / 180;
      const out = radius * (at % 2 === 0 ? 1 : 0.7);
      return this.at(x + Math.sin(angle) * out, y - Math.cos(angle) * out, 'leaf');
    });
    this.put('leaf', `M${this.at(x, y + radius * 0.1, 'leaf')}L${points.join('L')}Z`);
    for (const degrees of [-62, 0, 62]) {
      const angle = (degrees * Math.PI) / 180;
      this.bend(
        'vein',
        x,
        y,
        x + Math.sin(angle) * radius * 0.7,
        y - Math.cos(angle) * radius * 0.7,
      );
    }
  }

  disc(part: PartName, x: number, y: number, radiusX: number, radiusY = radiusX): void {
    this.put(
      part,
      `M${this.at(x - radiusX, y, part)}a${rounded(radiusX)} ${rounded(radiusY)} 0 1 0 ${rounded(2 * radiusX)} 0a${rounded(radiusX)} ${rounded(radiusY)} 0 1 0 ${rounded(-2 * radiusX)} 0Z`,
    );
  }

  /** A flower of pointed petals round its middle. */
  flower(x: number, y: number, radius: number, petals = 5): void {
    for (let petal = 0; petal < petals; petal += 1) {
      const angle = (petal / petals) * 2 * Math.PI;
      this.leaf(x, y, Math.sin(angle) * radius, -Math.cos(angle) * radius, 0.3, 'bloom');
    }
  }

  /** A pod that hangs from its stalk. */
  pod(x: number, y: number, length: number, lean: number): void {
    this.leaf(x, y, lean, length, 0.09, 'fruit');
  }

  /** The gathered paths, by part. */
  drawn(): Readonly<Partial<Record<PartName, string>>> {
    return Object.fromEntries([...this.paths].map(([part, paths]) => [part, paths.join('')]));
  }
}
