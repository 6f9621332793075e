import { StuffWeaves } from '../cover/StuffWeaves';

/** Patterns of all that lies in a section: what covers are of, crumbly soil, and the paler soil below. */
export function SectionWeaves({ prefix }: { readonly prefix: string }) {
  return (
    <svg className="section-defs" width="0" height="0" aria-hidden="true" focusable="false">
      <StuffWeaves prefix={prefix} />
      <defs>
        <pattern id={`${prefix}-crumb`} width="31" height="23" patternUnits="userSpaceOnUse">
          <rect className="soil-ground" width="31" height="23" />
          <path
            className="section-crumbs"
            d="M3 4h1.4M12 2.5h2M22 6h1M7 11h1.4M17 13.5h2M27 12h1.2M2 19h1M11 20h1.8M23 19.5h1"
          />
        </pattern>
        <pattern id={`${prefix}-subsoil`} width="43" height="37" patternUnits="userSpaceOnUse">
          <rect className="subsoil-ground" width="43" height="37" />
          <path className="section-crumbs" d="M6 7h1.2M27 4h2M16 20h1.2M36 24h2M8 32h1.4" />
        </pattern>
      </defs>
    </svg>
  );
}
