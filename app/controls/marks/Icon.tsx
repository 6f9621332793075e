import { iconPaths, type IconName } from './iconPaths';

/** A garden thing beside the word that names it; hidden from screen readers, which have the word. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg
      className="icon"
      viewBox="0 0 20 20"
      width="20"
      height="20"
      aria-hidden="true"
      focusable="false"
    >
      <path d={iconPaths[name]} />
    </svg>
  );
}
