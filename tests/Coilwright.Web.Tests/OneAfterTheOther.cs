using Xunit.Sdk;
using Xunit.v3;

// Two browsers beside each other on two cores wait for one another longer than for the pages.
[assembly: Parallelization(Mode = ParallelMode.None)]
