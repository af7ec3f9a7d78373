import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { JointLinesProps } from './JointLines.tsx';

/** The figures of a joint, loaded when they are first asked for: the formulas and tables stay out of the bench. */
export function LaterLines(props: JointLinesProps) {
  const [loaded, setLoaded] = useState<{ Lines: ComponentType<JointLinesProps> } | 'failed'>();
  useEffect(() => {
    let current = true;
    import('./JointLines.tsx').then(
      ({ JointLines }) => current && setLoaded({ Lines: JointLines }),
      () => current && setLoaded('failed'),
    );
    return () => {
      current = false;
    };
  }, []);
  if (loaded === 'failed')
    return <p role="alert">The figures could not be loaded. Close this and try again.</p>;
  return loaded ? <loaded.Lines {...props} /> : <p role="status">One moment…</p>;
}
