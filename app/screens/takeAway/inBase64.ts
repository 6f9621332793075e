/** A file's bytes in base64, without the words before them. */
export const inBase64 = (file: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => {
      const text = String(reader.result);
      resolve(text.slice(text.indexOf(',') + 1));
    });
    reader.addEventListener('error', () => reject(reader.error ?? new Error('not read')));
    reader.readAsDataURL(file);
  });
