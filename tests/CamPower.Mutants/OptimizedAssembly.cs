using System;
using System.Collections.Immutable;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using static System.Diagnostics.DebuggableAttribute;

namespace CamPower.Mutants;

/// <summary>Lets the runtime optimize an assembly that was compiled for debugging, as Stryker's always is: the tests then take a fraction of the time.</summary>
internal static class OptimizedAssembly
{
    /// <summary>Changes the value of the assembly's <see cref="DebuggableAttribute"/> in its file.</summary>
    public static void Make(string path)
    {
        byte[] file = File.ReadAllBytes(path);
        using (var image = new PEReader(ImmutableArray.Create(file)))
        {
            MetadataReader metadata = image.GetMetadataReader();
            BlobHandle value = metadata.GetAssemblyDefinition().GetCustomAttributes()
                .Select(metadata.GetCustomAttribute).Single(a => IsDebuggable(metadata, a)).Value;
            // The blob is a prologue of two bytes and the modes; before it stands its length, in one byte.
            int start = image.PEHeaders.MetadataStartOffset + metadata.GetHeapMetadataOffset(HeapIndex.Blob) + metadata.GetHeapOffset(value) + 1;
            BitConverter.TryWriteBytes(file.AsSpan(start + 2, 4), (int)DebuggingModes.IgnoreSymbolStoreSequencePoints);
        }

        File.WriteAllBytes(path, file);
    }

    private static bool IsDebuggable(MetadataReader metadata, CustomAttribute attribute) =>
        attribute.Constructor.Kind == HandleKind.MemberReference
        && metadata.GetMemberReference((MemberReferenceHandle)attribute.Constructor).Parent is { Kind: HandleKind.TypeReference } type
        && metadata.GetString(metadata.GetTypeReference((TypeReferenceHandle)type).Name) == nameof(DebuggableAttribute);
}
