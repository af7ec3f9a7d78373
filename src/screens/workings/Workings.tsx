import { AllPage, isListed } from './AllPage.tsx';
import { JointPage } from './JointPage.tsx';

/** The figures of one joint; in place of a joint's id, the list of every working or one of its forms. */
export function Workings({ jointId }: { jointId: string }) {
  return isListed(jointId) ? <AllPage id={jointId} /> : <JointPage jointId={jointId} />;
}
