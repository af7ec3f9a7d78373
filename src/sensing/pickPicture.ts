/**
 * Asks for a picture, from the camera or from those on the phone, as the phone itself offers it. Must be
 * called from a press, or the browser refuses. The field is made when it is asked for: laying out a hidden
 * one takes the browser about a third of the time for a whole step at the bench.
 * @param onFile called once, unless nothing is chosen
 */
export function pickPicture(onFile: (file: File) => void): void {
  const field = document.createElement('input');
  field.type = 'file';
  field.accept = 'image/*';
  // Some browsers forget a field that is not on the page before it has answered.
  field.hidden = true;
  document.body.append(field);
  field.addEventListener('cancel', () => field.remove());
  field.addEventListener('change', () => {
    const file = field.files?.[0];
    field.remove();
    if (file) onFile(file);
  });
  field.click();
}
