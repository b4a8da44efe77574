// These tests build and run programs: two at once would only slow each other down.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
