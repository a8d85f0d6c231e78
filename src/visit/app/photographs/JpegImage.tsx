import { useEffect, useMemo } from 'preact/hooks';
import type { Photograph } from '../../record/photograph.ts';
import { plainJpeg } from '../../record/plain-jpeg.ts';

interface Props {
  photograph: Photograph;
  alt: string;
}

/** A photograph of the record, drawn from its bytes. */
export function JpegImage({ photograph: { jpeg }, alt }: Props) {
  const { address, size } = useMemo(() => {
    const read = plainJpeg(jpeg);
    return {
      address: URL.createObjectURL(new Blob([jpeg], { type: 'image/jpeg' })),
      size: read && { width: read.width, height: read.height },
    };
  }, [jpeg]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  // With its size the page does not move when it appears.
  return <img class="photograph" src={address} alt={alt} {...size} />;
}
