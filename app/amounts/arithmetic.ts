import { create, parseDependencies, type MathNode } from 'mathjs/number';
import { failure, success, type Result } from '../core/result';
import type { KnownContainer, Refusal } from './amount';

// Only the parser is taken: nothing typed is ever evaluated, and no function can be reached.
const math = create({ ...parseDependencies }, {});

/** A number with its dimension: metres to a power, kilograms to a power, or one kind of container. */
export interface Value {
  readonly amount: number;
  readonly metres: number;
  readonly kilograms: number;
  readonly container: KnownContainer | null;
}
export const plainNumber = (amount: number): Value => ({
  amount,
  metres: 0,
  kilograms: 0,
  container: null,
});
const isPlain = (value: Value): boolean =>
  value.metres === 0 && value.kilograms === 0 && value.container === null;
export const isVolume = (value: Value): boolean =>
  value.metres === 3 && value.kilograms === 0 && value.container === null;

const mixed = failure<Refusal>({ kind: 'mixed-dimensions' });
const nonsense = failure<Refusal>({ kind: 'not-an-amount' });

/** A counted container times its content is the content: 3 bags * 35 L is 105 L. */
function times(left: Value, right: Value): Result<Value, Refusal> {
  if (left.container && right.container) return mixed;
  const container = left.container ?? right.container;
  const other = left.container ? right : left;
  const filled = isVolume(other) || (other.kilograms === 1 && other.metres === 0);
  if (container && !isPlain(other) && !filled) return mixed;
  return success({
    amount: left.amount * right.amount,
    metres: left.metres + right.metres,
    kilograms: left.kilograms + right.kilograms,
    container: container && !filled ? container : null,
  });
}

function over(left: Value, right: Value): Result<Value, Refusal> {
  if (right.amount === 0) return nonsense;
  const sameContainer = left.container !== null && left.container.id === right.container?.id;
  if (right.container && !sameContainer) return mixed;
  if (left.container && !isPlain(right) && !sameContainer) return mixed;
  return success({
    amount: left.amount / right.amount,
    metres: left.metres - right.metres,
    kilograms: left.kilograms - right.kilograms,
    container: sameContainer ? null : left.container,
  });
}

/** What is added to containers is counted in the first container, so that weighing it still tells. */
function plus(left: Value, right: Value, sign: 1 | -1): Result<Value, Refusal> {
  const container = left.container ?? right.container;
  if (container) {
    const one = inContainers(left, container);
    const two = inContainers(right, container);
    if (one === null || two === null) return mixed;
    return success({ amount: one + sign * two, metres: 0, kilograms: 0, container });
  }
  if (left.metres !== right.metres || left.kilograms !== right.kilograms) return mixed;
  return success({ ...left, amount: left.amount + sign * right.amount });
}

function inContainers(value: Value, container: KnownContainer): number | null {
  if (value.container) return (value.amount * value.container.litres) / container.litres;
  return isVolume(value) ? (value.amount * 1000) / container.litres : null;
}

type Node = MathNode & {
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly args?: readonly Node[];
  readonly content?: Node;
};

function walk(node: Node, symbols: readonly Value[]): Result<Value, Refusal> {
  switch (node.type) {
    case 'ConstantNode':
      return typeof node.value === 'number' && Number.isFinite(node.value)
        ? success(plainNumber(node.value))
        : nonsense;
    case 'ParenthesisNode':
      return node.content ? walk(node.content, symbols) : nonsense;
    case 'SymbolNode': {
      const index = /^u(\d+)$/.exec(node.name ?? '');
      const value = symbols[Number(index?.[1] ?? -1)];
      return value ? success(value) : nonsense;
    }
    case 'OperatorNode': {
      const [leftNode, rightNode] = node.args ?? [];
      if (!leftNode) return nonsense;
      const left = walk(leftNode, symbols);
      if (!left.ok) return left;
      if (!rightNode)
        return node.op === '-'
          ? success({ ...left.value, amount: -left.value.amount })
          : node.op === '+'
            ? left
            : nonsense;
      const right = walk(rightNode, symbols);
      if (!right.ok) return right;
      switch (node.op) {
        case '*':
          return times(left.value, right.value);
        case '/':
          return over(left.value, right.value);
        case '+':
          return plus(left.value, right.value, 1);
        case '-':
          return plus(left.value, right.value, -1);
        case '^': {
          const power = right.value.amount;
          if (!isPlain(right.value) || left.value.container || (power !== 2 && power !== 3))
            return nonsense;
          return success({
            ...left.value,
            amount: left.value.amount ** power,
            metres: left.value.metres * power,
            kilograms: left.value.kilograms * power,
          });
        }
        default:
          return nonsense;
      }
    }
    default:
      return nonsense;
  }
}

/**
 * The value of a sum such as `((2+1/2)*u0)`, where `u0` stands for `symbols[0]`.
 *
 * The text is parsed to a tree and the tree is walked: constants, parentheses, known symbols,
 * + - * / and the powers 2 and 3. Everything else is refused as `not-an-amount`; adding unlike
 * things as `mixed-dimensions`.
 */
export function valueOf(expression: string, symbols: readonly Value[]): Result<Value, Refusal> {
  let tree: Node;
  try {
    tree = math.parse(expression) as Node;
  } catch {
    return nonsense;
  }
  const value = walk(tree, symbols);
  return value.ok && !Number.isFinite(value.value.amount) ? nonsense : value;
}
