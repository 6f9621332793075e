import { useCommands } from '../frame/commands';
import { useMowings } from '../store';

/** Gardens used lately; one that is no longer where it was says so and cannot be picked. */
export function RecentGardens({ onPick }: { readonly onPick?: () => void }) {
  const recent = useMowings((state) => state.recent);
  const commands = useCommands();
  return (
    <ul className="plain-list recent">
      {recent.map((file) => (
        <li key={file.id}>
          {file.missing ? (
            <span className="recent-missing">
              {file.name} <small className="soft">is no longer where it was</small>
            </span>
          ) : (
            <button
              type="button"
              className="button recent-file"
              onClick={() => {
                onPick?.();
                commands.openRecent(file.id);
              }}
            >
              {file.name}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
