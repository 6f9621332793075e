/** Open ground: drawn where there is no bed yet. Says nothing the words beside it do not. */
function OpenGround() {
  return (
    <svg className="open-ground" viewBox="0 0 280 132" aria-hidden="true" focusable="false">
      <path className="cut-soil" d="M0 52 H280 V132 H0 Z" />
      <path
        className="cut-grass"
        d={Array.from({ length: 18 }, (_, index) => {
          const x = (index < 9 ? 3 : 208) + (index % 9) * 8.4;
          return `M${x} 52 q1 -7 ${((index * 7) % 5) - 2} ${-10 - ((index * 5) % 6)}`;
        }).join('')}
      />
      <path className="cut-pen" d="M84 52 V40 M196 52 V40 M84 43 Q140 48 196 43" />
      <path className="cut-pen" d="M150 50 L182 -2 M174 -4 L192 6" />
      <path className="cut-dot" d="M156 52 l-12 -7 c-8 6 -12 20 -10 34 c13 -6 21 -16 22 -27 Z" />
    </svg>
  );
}

/** What Beds shows while the garden has none. */
export function NoBeds({ onAdd }: { readonly onAdd: () => void }) {
  return (
    <div className="nothing-yet sheet">
      <OpenGround />
      <div className="section">
        <p className="lead">
          There is no bed yet. With its size, its soil and what grows in it, its sums begin.
        </p>
        <div>
          <button type="button" className="button-main" onClick={onAdd}>
            Add the first bed
          </button>
        </div>
      </div>
    </div>
  );
}
